import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import hoseBore from '@trochoid/compute/fuel/hoseBore.calc.ts'
import { linePressureLoss, pumpFlow } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly loss: readonly number[] }

const sizes = [4, 6, 8] as const

/** What the feed loses over flow in three sizes of hose. */
export default lineFigure<Data>({
  title: 'What the feed loses in three sizes of hose',
  says: 'Pressure loss of the feed over flow for hoses of dash 4, 6 and 8.',
  x: pumpFlow, y: linePressureLoss,
  from({ sheet, point }) {
    const of: AnyCalculation = hoseBore
    const here = point['fuel.pumpFlow']
    if (here === undefined) return null
    const given = valuesFor(of, sheet, point)
    const at = (flow: number, dash: number): number | null => answered(of, { ...given, flow, dash }, 'loss')
    const loss = sizes.map((d) => at(here, d))
    if (loss.some((v) => v === null)) return null
    const x = steps(0.1 * here, 1.4 * here, 20)
    return { here, loss: loss as number[], x, lines: sizes.map((d) => ({ name: `Dash ${d}`, y: x.map((q) => at(q, d)) })), uprights: [{ says: 'pump here', at: here }] }
  },
  summary: ({ here, loss }, system) => `At ${shown(pumpFlow, system).say(here)} the feed with its filter and fittings loses ${sizes.map((d, i) => `${shown(linePressureLoss, system).say(loss[i]!)} in dash ${d}`).join(', ')}. One size up takes off most of what is there; the next takes off little more. Loss goes nearly with the square of flow.`,
  without: 'The pump flow of this build is not known, so nothing is drawn.',
})
