import type { CompressorMap, Curve, MapShape, Points } from '@trochoid/compute/quantity/quantity.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { curveText, headOf, mapText } from './rowText.ts'

type Props = { id: string; label: string; shape: Curve | MapShape; value: unknown; system: System; onValue: (value: unknown) => void }

/** A curve or a map as rows of numbers, as they come out of a spreadsheet. */
export function Rows({ id, label, shape, value, system, onValue }: Props) {
  const [local, setLocal] = useState<{ text: string; fault?: string } | null>(null)
  const text = local?.text ?? (value === null ? '' : shape.kind === 'curve' ? curveText(value as Points, shape, system) : mapText(value as CompressorMap))
  const type = async (next: string) => {
    setLocal({ text: next })
    if (next.trim() === '') return onValue(null)
    const { readRows } = await import('./readRows.ts')
    const read = readRows(next, shape, system)
    if (!read.ok) return setLocal((now) => (now?.text === next ? { text: next, fault: read.says } : now))
    onValue(read.value)
  }
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <textarea id={id} spellcheck={false} aria-describedby={`${id}-${local?.fault ? 'fault' : 'hint'}`} aria-invalid={local?.fault ? true : undefined} value={text} onInput={(e) => void type(e.currentTarget.value)} />
      {local?.fault ? <div id={`${id}-fault`} class="fault">{local.fault}</div> : <p id={`${id}-hint`} class="hint">One point a line: {headOf(shape, system)}. Numbers between spaces, semicolons or tabs.</p>}
    </div>
  )
}
