import { labelOf, numericInputs } from '@trochoid/compute/calculation/calculation.ts'
import { solveFor } from '@trochoid/compute/calculation/backwards.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import { shownUnit, write } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { Choose } from '../parts/Choose.tsx'
import { Field } from '../parts/Field.tsx'
import { numberText, readTyped } from '../parts/typed.ts'
import { useStore } from '../parts/useStore.ts'
import type { Model } from './model.ts'
import { outLabel, outQuantity } from './shapes.ts'

/** Which value of one given makes an answer come out as wanted. */
export function BackwardsFold({ model, uid }: { model: Model; uid: string }) {
  const now = useStore(model.state)
  const { of, system } = now
  const inputs = numericInputs(of).filter((name) => typeof now.values[name] === 'number')
  const [output, setOutput] = useState(of.curve[1])
  const [input, setInput] = useState(inputs.includes(of.curve[0]) ? of.curve[0] : inputs[0] ?? '')
  const q = outQuantity(of, output)
  const [typed, setTyped] = useState<{ text: string; unit: string; reading: Read | Refused | null }>({ text: '', unit: '', reading: null })
  if (inputs.length === 0) return <p>There is no number to solve for.</p>
  const here = now.result?.outputs[output]
  const unit = typed.unit || shownUnit(q, system)
  const text = typed.reading || typed.text ? typed.text : here === undefined ? '' : numberText(here, q, unit)
  const wanted = typed.reading ? (typed.reading.ok ? typed.reading.value : null) : here ?? null
  const shape = of.in[input]!.shape as Quantity
  const found = wanted === null ? null : solveFor(of, now.values, input, output, wanted)
  const take = (next: string) => {
    const reading = readTyped(next, { ...q, range: [-Infinity, Infinity] }, unit)
    const done = (r: Read | Refused) => setTyped({ text: next, unit: r.ok ? r.unit : unit, reading: r })
    setTyped({ ...typed, text: next })
    if (reading instanceof Promise) void reading.then(done); else done(reading)
  }
  const name = labelOf(of.in[input]!)
  return (
    <div>
      <div class="two">
        <Choose id={`${uid}-wants`} label="The answer that is wanted" value={output} options={Object.keys(of.out).map((o) => [o, outLabel(of, o)])} onChoose={(o) => { setOutput(o); setTyped({ text: '', unit: '', reading: null }) }} />
        <Field id={`${uid}-wanted`} label="to be" shape={q} text={text} unit={unit} fault={typed.reading && !typed.reading.ok ? typed.reading : undefined} onType={take} />
        <Choose id={`${uid}-by`} label="by changing" value={input} options={inputs.map((i) => [i, labelOf(of.in[i]!)])} onChoose={setInput} />
      </div>
      {found && (
        <div role="status">
          {found.values.length > 0 && (
            <ul>{found.values.map((x) => <li key={x}>{name} <strong>{write(x, shape, shownUnit(shape, system), 4)}</strong> <button type="button" class="plain no-print" onClick={() => model.put({ [input]: x })}>Put it in above</button></li>)}</ul>
          )}
          {found.notes.map((note) => <p class="small" key={note}>{note}</p>)}
        </div>
      )}
    </div>
  )
}
