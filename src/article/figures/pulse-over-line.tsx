import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { lineLength, pressurePulse } from '@trochoid/compute/fuel/quantities.ts'
import railPulse from '@trochoid/compute/fuel/railPulse.calc.ts'
import { MPa, mm } from '@trochoid/compute/quantity/si.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly soft: number; readonly hard: number; readonly steady: number }

/** The pulse of one injector's closing over the length of the line behind it, in a rubber hose and in a steel tube. */
export default lineFigure<Data>({
  title: 'Pressure pulse of one closing injector, hose and tube',
  says: 'Pressure pulse over length of line for a rubber hose and a steel tube.',
  x: lineLength, y: pressurePulse,
  from({ sheet, point }) {
    const of: AnyCalculation = railPulse
    if (point['fuel.nozzleDrop'] === undefined) return null
    const given = valuesFor(of, sheet, point), here = given['length'] as number
    const at = (length: number, tube: boolean): number | null => answered(of, { ...given, length, ...(tube && { modulus: MPa(200000), wall: mm(1) }) }, 'pulse')
    const soft = at(here, false), hard = at(here, true)
    if (soft === null || hard === null) return null
    const x = steps(0.05, 1.5, 29)
    return { here, soft, hard, steady: point['fuel.linkLoss'] ?? 0, x, lines: [{ name: 'Rubber hose', y: x.map((l) => at(l, false)) }, { name: 'Steel tube', y: x.map((l) => at(l, true)) }], uprights: [{ says: 'line of this build', at: here }] }
  },
  summary: ({ here, soft, hard, steady }, system) => {
    const p = shown(pressurePulse, system)
    return `At ${shown(lineLength, system).say(here)}: up to ${p.say(soft)} in a hose of the card’s stiffness, up to ${p.say(hard)} in a steel tube. The steady loss of that line is ${p.say(steady)}. In a short line the echo is back before the needle has shut and takes the pulse down; from some length on it no longer helps. This is an upper bound for one injector, with no damper and no branch.`
  },
  without: 'The pressure across the injectors of this build could not be worked out, so nothing is drawn.',
})
