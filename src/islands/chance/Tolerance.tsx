import { valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { isQuantity, type Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import type { Input } from '@trochoid/compute/uncertainty/inputs.ts'
import { methodsFor, spreadBy } from '@trochoid/compute/uncertainty/methods.ts'
import type { Form } from '@trochoid/compute/uncertainty/spread.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import { useState } from 'preact/hooks'
import { setTolerance } from '../../state/tolerances.ts'
import { written } from '../parts/say.ts'
import { Field } from '../parts/Field.tsx'
import { numberText, readTyped } from '../parts/typed.ts'
import { fromWords } from '../margins/words.ts'

const forms: Readonly<Record<Form, string>> = { normal: 'normal', triangular: 'triangular', rectangular: 'rectangular' }

/** Half the width by which one number may be out, how it is spread there, and by what it was measured. */
export function Tolerance({ of, sheet, system }: { of: Input; sheet: Sheet; system: System }) {
  const id = `t-${of.id.replace(/[.#]/g, '-')}`
  const quantity: Quantity = { ...of.of, symbol: '±', range: [0, 10 * of.of.step] }
  const unit = shownUnit(quantity, system)
  const [typed, setTyped] = useState<{ readonly text: string; readonly fault?: Refused | { readonly says: string } } | null>(null)
  const { shape } = of.field
  const value: unknown = valueAt(sheet, of.field)
  const methods = isQuantity(shape) ? methodsFor(shape.kind) : []
  const done = (text: string, read: Read | Refused) => {
    if (!read.ok) return setTyped({ text, fault: read })
    if (read.value < 0) return setTyped({ text, fault: { says: 'A tolerance is nothing or more: it counts both up and down.' } })
    setTyped({ text })
    setTolerance(of.id, { form: of.spread.form, half: read.value })
  }
  const type = (text: string) => {
    const read = readTyped(text, quantity, unit)
    if (!(read instanceof Promise)) return done(text, read)
    setTyped({ text })
    return void read.then((later) => done(text, later))
  }
  return (
    <div class="entry">
      <Field id={id} label={of.name} shape={quantity} unit={unit} text={typed?.text ?? numberText(of.spread.half, quantity, unit)} fault={typed?.fault} onType={type}>
        <p class="hint">{isQuantity(shape) ? `${written(value, shape, system)}, ` : ''}{fromWords[of.from].toLowerCase()}</p>
        <div class="row from">
          <label class="small" for={`${id}-form`}>Spread</label>
          <select id={`${id}-form`} value={of.spread.form} onChange={(e) => setTolerance(of.id, { ...of.spread, form: e.currentTarget.value as Form })}>
            {(Object.keys(forms) as Form[]).map((form) => <option key={form} value={form} selected={form === of.spread.form}>{forms[form]}</option>)}
          </select>
          {methods.length > 0 && typeof value === 'number' && <>
            <label class="small" for={`${id}-by`}>Measured by</label>
            <select id={`${id}-by`} value="" onChange={(e) => { const method = methods.find((m) => m.id === e.currentTarget.value); if (method) { setTyped(null); setTolerance(of.id, spreadBy(method, value)) } e.currentTarget.value = '' }}>
              <option value="">choose to fill in</option>
              {methods.map((m) => <option key={m.id} value={m.id}>{m.says}</option>)}
            </select>
          </>}
          {of.spread !== of.usual && <button type="button" class="plain" onClick={() => { setTyped(null); setTolerance(of.id, null) }}>As the handbook has it</button>}
        </div>
      </Field>
    </div>
  )
}
