import { quantityOf, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { useEffect, useRef, useState } from 'preact/hooks'
import { setThreshold } from '../../state/thresholds.ts'
import type { Store } from '../../state/store.ts'
import { system } from '../../state/system.ts'
import type { View } from '../../state/view.ts'
import { Entry } from '../sheet/Entry.tsx'
import type { Told } from './Margins.tsx'
import { Remedies } from './Remedies.tsx'
import { ThresholdField } from './ThresholdField.tsx'

/** Beneath a margin: its numbers to change, its remedies, its threshold, what would settle it, the article. Drawn when opened. */
export function More({ of, view, told }: { of: Weighed; view: Store<View>; told: Told }) {
  const [open, setOpen] = useState(false)
  const fold = useRef<HTMLDetailsElement>(null)
  // It may have been opened before the page came alive.
  useEffect(() => setOpen(fold.current?.open ?? false), [])
  const { margin } = of
  const { fields, sheet } = view.get()
  const article = told.articles[of.id]
  const paths = [...new Set([...margin.rests.map((f) => f.path), ...margin.remedies.map((r) => r.field.path), ...of.missing])].filter((path) => fields.has(path))
  return (
    <details ref={fold} onToggle={(e) => setOpen(e.currentTarget.open)} class="no-print">
      <summary class="small">{of.state === 'holds' ? 'Its numbers' : of.state === 'not known' ? 'What would tell' : 'Its numbers and remedies'}</summary>
      {open && (
        <>
          <p class="small">{margin.settle} {article && <a href={article[0]}>{article[1]}</a>} · <a href={`${told.plainly}#${of.id}`}>In plain words</a></p>
          {(of.state === 'short' || of.state === 'tight') && margin.remedies.length > 0 && <Remedies of={of} view={view} />}
          <div class="two">{paths.map((path) => <Entry key={path} field={fields.get(path)!} fields={fields} sheet={sheet} system={system.get()} uid={`m-${of.id}`} brief />)}</div>
          {!margin.always && <ThresholdField of={of} quantity={thresholdQuantity(of)} onChange={(value) => setThreshold(of.id, value)} />}
        </>
      )}
    </details>
  )
}

/** The quantity of what is left: a share, or a difference in the quantity's own unit. */
function thresholdQuantity({ margin }: Weighed): Quantity {
  const name = 'Tight begins below'
  if (margin.as === 'share') return { id: 'tight', name, symbol: '', kind: 'share', range: [0, 1], step: 0.01 }
  const q = quantityOf(margin.capacity)
  const kind = q.kind === 'temperature' ? 'temperatureDifference' : q.kind === 'pressure' || q.kind === 'gaugePressure' ? 'pressureDifference' : q.kind
  return { id: 'tight', name, symbol: '', kind, range: [0, Math.max(margin.tight * 10, q.step * 100)], step: q.step, ...(kind === q.kind && q.show && { show: q.show }) }
}
