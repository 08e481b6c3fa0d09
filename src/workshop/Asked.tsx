import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import { shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { Field } from '../islands/parts/Field.tsx'
import { numberText, readTyped } from '../islands/parts/typed.ts'

/** One number that must be asked, with what was typed kept. */
export function Asked({ id, of, system, start, onValue }: { id: string; of: Quantity; system: System; start?: number; onValue: (value: number | null) => void }) {
  const [unit, setUnit] = useState(shownUnit(of, system))
  const [text, setText] = useState(start === undefined ? '' : numberText(start, of, unit))
  const [reading, setReading] = useState<Read | Refused | null>(null)
  const done = (r: Read | Refused) => {
    setReading(r)
    if (r.ok) setUnit(r.unit)
    onValue(r.ok ? r.value : null)
  }
  const type = (next: string) => {
    setText(next)
    const r = readTyped(next, of, unit)
    if (r instanceof Promise) void r.then(done)
    else done(r)
  }
  return <Field id={id} label={of.name} shape={of} text={text} unit={unit} fault={reading && !reading.ok && reading.fault !== 'empty' ? reading : undefined} doubt={reading?.ok ? reading.doubt : undefined} onType={type} />
}
