import type { Worth } from '@trochoid/compute/build/measureNext.ts'
import { useEffect, useState } from 'preact/hooks'
import type { Store } from '../../state/store.ts'
import { thresholds } from '../../state/thresholds.ts'
import { namer, type View } from '../../state/view.ts'
import { useStore } from '../parts/useStore.ts'
import { ask } from '../../state/solver/ask.ts'
import type { Told } from '../../state/solver/tasks.ts'

const shown = 10
type Props = { view: Store<View>; first: readonly Worth[]; /** Where the glossary is. */ glossary: string }

/** Unknowns and guesses, those first that settle most. Worked out in a worker, when asked. */
export function Next({ view, first, glossary }: Props) {
  const { sheet, fields, weighed } = useStore(view)
  const nameOf = namer(fields)
  const titleOf = (id: string): string => { const t = weighed.find((w) => w.id === id)?.margin.title ?? id; return t[0]!.toLowerCase() + t.slice(1) }
  const [found, setFound] = useState<{ worth: readonly Worth[]; sheet: View['sheet'] | null }>({ worth: first, sheet: first.length > 0 ? sheet : null })
  const [progress, setProgress] = useState<number | null>(null)
  const [running, setRunning] = useState(false)
  useEffect(() => {
    if (!running) return undefined
    const stop = ask({ kind: 'next', sheet, thresholds: thresholds.get() }, (told: Told) => {
      if (told.kind === 'progress') setProgress(told.done / told.all)
      if (told.kind === 'worth') setFound({ worth: told.worth, sheet })
      if (told.kind === 'done' || told.kind === 'failed') { setRunning(false); setProgress(null) }
    })
    return () => { stop(); setRunning(false); setProgress(null) }
  }, [running, sheet])
  const stale = found.sheet !== sheet
  return (
    <>
      <ol class={stale ? 'soft' : undefined}>
        {found.worth.slice(0, shown).map((w) => {
          const field = fields.get(w.field)
          return <li key={w.field}><a href={`${glossary}#${field?.shape.id ?? ''}`}>{sentenceCase(nameOf(w.field))}</a>{w.kind === 'unknown' ? ' is not known' : ' is not measured'}{w.settles.length > 0 ? `${w.kind === 'unknown' ? ', and without it neither is' : ': it could tip'} ${w.settles.map(titleOf).join(', ')}.` : '.'}</li>
        })}
      </ol>
      {found.sheet && !running && found.worth.length === 0 && <p>Nothing that is unknown or guessed moves a margin much.</p>}
      <p class="row no-print">
        <button type="button" disabled={running} onClick={() => setRunning(true)}>{stale ? 'Rank them for the build as it is now' : 'Rank them again'}</button>
        {running && <><progress value={progress ?? 0} aria-label="Ranking" /><button type="button" class="plain" onClick={() => setRunning(false)}>Stop</button></>}
      </p>
    </>
  )
}
const sentenceCase = (text: string): string => text[0]!.toUpperCase() + text.slice(1)
