import { liesOutside, wantedOf } from '@trochoid/compute/record/expected.ts'
import type { Measured } from '@trochoid/compute/record/items.ts'
import type { Written } from '@trochoid/compute/record/record.ts'
import { shownUnit, write, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { Field, type Fault } from '../parts/Field.tsx'
import { numberText, readTyped } from '../parts/typed.ts'

type Props = { item: Measured; line: Written | undefined; fields: ReadonlyMap<string, unknown>; nameOf: (path: string) => string; system: System; onWrite: (change: Written) => void }

/** One measurement: what was typed is kept, what the sheet expects stands beside it, and a figure outside it is told. */
export function MeasuredLine({ item, line, fields, nameOf, system, onWrite }: Props) {
  const [typed, setTyped] = useState<{ text: string; fault?: Fault } | null>(null)
  const unit = shownUnit(item.quantity, system)
  const wanted = wantedOf(item, fields)
  const value = line?.value
  const said = wanted && `${write(wanted.low, item.quantity, unit)} to ${write(wanted.high, item.quantity, unit)}, ${wanted.field === null ? 'common practice, no source' : `by the sheet’s ${nameOf(wanted.field)}`}`
  const outside = liesOutside(value, wanted)
  const take = (text: string, r: Awaited<ReturnType<typeof readTyped>>): void => {
    if (!r.ok) return setTyped({ text, ...(r.fault !== 'empty' && { fault: r }) })
    setTyped({ text })
    onWrite({ value: r.value, typed: text })
  }
  const type = (text: string): void => {
    if (text.trim() === '') { setTyped({ text }); return onWrite({ value: undefined, typed: undefined } as unknown as Written) }
    const r = readTyped(text, item.quantity, unit)
    if (!(r instanceof Promise)) return take(text, r)
    setTyped({ text })
    void r.then((later) => take(text, later))
  }
  return (
    <Field id={`r-${item.id}`} label={item.name} shape={{ ...item.quantity, symbol: '' }} unit={unit} text={typed?.text ?? (value === undefined ? '' : numberText(value, item.quantity, unit))} fault={typed?.fault} onType={type}
      doubt={outside ? `Outside what is expected, ${said}.` : undefined}>
      {!outside && said && <p class="differs">Expected {said}.</p>}
      {line?.on && <p class="small soft">{[line.by, line.on].filter(Boolean).join(', ')}</p>}
    </Field>
  )
}
