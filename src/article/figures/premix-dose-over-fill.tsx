import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import premixDose from '@trochoid/compute/fuel/premixDose.calc.ts'
import { premixShare, tankVolume } from '@trochoid/compute/fuel/quantities.ts'
import { tank } from '@trochoid/compute/fuel/fields.ts'
import { oilDose } from '@trochoid/compute/fuel/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly wanted: number; readonly present: number; readonly whole: number; readonly right: number; readonly plain: number }

/** Oil to pour in over the fuel filled, for what the quarter tank already holds: the wanted share, none, or twice as much. */
export default lineFigure<Data>({
  title: 'Oil to pour in, for what is already in the tank',
  says: 'Oil to add over fuel filled, for a quarter tank that is mixed right, plain, or twice too strong.',
  x: tankVolume, y: oilDose, named: { x: 'Fuel filled in' },
  from({ sheet, point }) {
    const of: AnyCalculation = premixDose
    const whole = valueAt(sheet, tank), given = valuesFor(of, sheet, point), wanted = given['wanted'] as number
    if (whole === null || !(wanted > 0)) return null
    const present = whole / 4
    const dose = (added: number, presentShare: number): number | null => answered(of, { ...given, added, present, presentShare }, 'dose')
    const x = steps(0, whole - present, 15)
    const right = dose(whole - present, wanted), plain = dose(whole - present, 0)
    if (right === null || plain === null) return null
    const line = (name: string, share: number) => ({ name, y: x.map((v) => dose(v, share)) })
    return { wanted, present, whole, right, plain, x, lines: [line('Mixed right', wanted), line('Plain fuel', 0), line('Twice too strong', 2 * wanted)] }
  },
  summary({ wanted, present, whole, right, plain }, system) {
    const v = shown(tankVolume, system), o = shown(oilDose, system)
    return `Wanted is ${shown(premixShare, system).say(wanted)}. ${v.say(present)} are in a tank of ${v.say(whole)}. Filled to the brim it takes ${o.say(right)} of oil if what is there was mixed right, and ${o.say(plain)} if it was plain fuel. Below the zero line the tank holds more oil than is wanted, and no oil is poured until the line comes up through it.`
  },
  without: 'No premix is wanted in this build, or its tank is not known, so nothing is drawn.',
})
