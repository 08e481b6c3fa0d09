import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import type { FunctionComponent } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'

type Props = { onKeep: (map: CompressorMap) => void }

/** The tracing table, fetched when its fold is opened. */
export function TraceFold({ onKeep }: Props) {
  const place = useRef<HTMLDivElement>(null)
  const [Pad, setPad] = useState<FunctionComponent<Props> | null>(null)
  useEffect(() => {
    const fold = place.current!.closest('details')!
    const fetch = () => { if (fold.open) void import('./Tracing.tsx').then(({ Tracing }) => setPad(() => Tracing)) }
    fetch()
    fold.addEventListener('toggle', fetch)
    return () => fold.removeEventListener('toggle', fetch)
  }, [])
  return (
    <div ref={place}>
      <p>
        Makers mostly publish a map as a picture. Open it here: it is drawn in this page and never leaves it. Fix both axes by two printed values each, then trace
        the surge line, every speed line from surge to choke, and the lines of equal efficiency, out to where they meet the edges of the map.
      </p>
      {Pad && <Pad onKeep={onKeep} />}
    </div>
  )
}
