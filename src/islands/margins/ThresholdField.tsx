import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import { shownUnit } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { system } from '../../state/system.ts'
import { Field } from '../parts/Field.tsx'
import { numberText, readTyped } from '../parts/typed.ts'

/** Where `tight` begins for this reader. */
export function ThresholdField({ of, quantity, onChange }: { of: Weighed; quantity: Quantity; onChange: (value: number | null) => void }) {
  const unit = shownUnit(quantity, system.get())
  const [text, setText] = useState(numberText(of.tight, quantity, unit))
  const [reading, setReading] = useState<Read | Refused | null>(null)
  const done = (r: Read | Refused) => { setReading(r); if (r.ok) onChange(r.value) }
  return (
    <Field id={`tight-${of.id}`} label={quantity.name} shape={quantity} text={text} unit={unit} fault={reading && !reading.ok ? reading : undefined}
      onType={(next) => { setText(next); const r = readTyped(next, quantity, unit); if (r instanceof Promise) void r.then(done); else done(r) }}>
      {of.tight !== of.margin.tight && <button type="button" class="plain" onClick={() => { onChange(null); setText(numberText(of.margin.tight, quantity, unit)) }}>As the handbook has it</button>}
    </Field>
  )
}
