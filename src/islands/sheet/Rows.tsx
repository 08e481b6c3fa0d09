import { readValue } from '@trochoid/compute/calculation/inputs.ts'
import type { CompressorMap, Curve, MapShape, Points } from '@trochoid/compute/quantity/quantity.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { curveText, headOf, mapText, readCurveText, readMapText } from './rowText.ts'

type Props = { id: string; label: string; shape: Curve | MapShape; value: unknown; system: System; onValue: (value: unknown) => void }

/** A curve or a map as rows of numbers, as they come out of a spreadsheet. */
export function Rows({ id, label, shape, value, system, onValue }: Props) {
  const [local, setLocal] = useState<{ text: string; fault?: string } | null>(null)
  const text = local?.text ?? (value === null ? '' : shape.kind === 'curve' ? curveText(value as Points, shape, system) : mapText(value as CompressorMap))
  const type = (next: string) => {
    if (next.trim() === '') { setLocal({ text: next }); return onValue(null) }
    const read = shape.kind === 'curve' ? readCurveText(next, shape, system) : readMapText(next)
    if (!read.ok) return setLocal({ text: next, fault: read.says })
    const weighed = readValue(read.value, shape)
    if (!weighed.ok) return setLocal({ text: next, fault: weighed.says })
    setLocal({ text: next })
    onValue(weighed.value)
  }
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <textarea id={id} spellcheck={false} aria-describedby={`${id}-${local?.fault ? 'fault' : 'hint'}`} aria-invalid={local?.fault ? true : undefined} value={text} onInput={(e) => type(e.currentTarget.value)} />
      {local?.fault ? <div id={`${id}-fault`} class="fault">{local.fault}</div> : <p id={`${id}-hint`} class="hint">One point a line: {headOf(shape, system)}. Numbers between spaces, semicolons or tabs.</p>}
    </div>
  )
}
