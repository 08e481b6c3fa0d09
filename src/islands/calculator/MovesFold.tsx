import { labelOf } from '@trochoid/compute/calculation/calculation.ts'
import { moves } from '@trochoid/compute/calculation/moves.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { differenceIn, writeDifference } from '../parts/difference.ts'
import { useStore } from '../parts/useStore.ts'
import type { Model } from './model.ts'
import { outLabel, outQuantity } from './shapes.ts'

/** How far each answer moves when one given moves by the step by which it is usually uncertain; the strongest first. */
export function MovesFold({ model }: { model: Model; uid: string }) {
  const now = useStore(model.state)
  const { of, system } = now
  if (!now.result) return <p>There is no answer to move.</p>
  const first = Object.keys(of.out)[0]!
  const size = (m: ReturnType<typeof moves>[number]) => Math.max(Math.abs(m.up[first] ?? 0), Math.abs(m.down[first] ?? 0))
  const all = [...moves(of, now.values)].sort((a, b) => size(b) - size(a))
  const change = (name: string, value: number | null | undefined): string => {
    if (value === null || value === undefined || !Number.isFinite(value)) return 'no answer'
    const q = outQuantity(of, name)
    const shown = differenceIn(value, q, system)
    return value === 0 ? '0' : `${value > 0 ? '+' : ''}${writeNumber(shown, 2)}`
  }
  return (
    <div class="scroll" tabindex={0} role="group" aria-label="What moves it">
      <table>
        <caption>Change of each answer when one given moves by its tolerance step, up and down, all others held</caption>
        <thead>
          <tr><th scope="col">Given</th><th scope="col" class="n">step</th>{Object.keys(of.out).map((name) => <th scope="col" class="n" key={name}>{outLabel(of, name)}, {writeDifference(outQuantity(of, name), system)}</th>)}</tr>
        </thead>
        <tbody>
          {all.map((m) => {
            const q = of.in[m.input]!.shape as Quantity
            return (
              <tr key={m.input}>
                <th scope="row">{labelOf(of.in[m.input]!)}</th>
                <td class="n">± {writeNumber(differenceIn(m.step, q, system), 2)} {writeDifference(q, system)}</td>
                {Object.keys(of.out).map((name) => <td class="n" key={name}>{change(name, m.up[name])} / {change(name, m.down[name])}</td>)}
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}
