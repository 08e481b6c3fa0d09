import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import deadTimes from '@trochoid/compute/fuel/deadTimes.calc.ts'
import { deadTime, pumpVoltage } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly now: number; readonly low: number }

const weak = 11

/** What each stage loses at an opening, over the voltage that reaches it. */
export default lineFigure<Data>({
  title: 'Dead time over voltage',
  says: 'Dead time of primary and secondary over voltage.',
  x: pumpVoltage, y: deadTime, named: { x: 'Voltage at the injector' },
  from({ sheet, point }) {
    const of: AnyCalculation = deadTimes
    const given = valuesFor(of, sheet, point)
    const here = given['voltage'] as number
    const at = (voltage: number, out: string): number | null => answered(of, { ...given, voltage }, out)
    const now = at(here, 'primaryNow'), low = at(weak, 'primaryNow')
    if (now === null || low === null) return null
    const x = steps(9, 15, 12)
    return { here, now, low, x, lines: [{ name: 'Primary', y: x.map((u) => at(u, 'primaryNow')) }, { name: 'Secondary', y: x.map((u) => at(u, 'secondaryNow')) }], marks: here >= 9 && here <= 15 ? [{ says: 'charging', x: here, y: now, below: true }] : [] }
  },
  summary({ here, now, low }, system) {
    const t = shown(deadTime, system), u = shown(pumpVoltage, system)
    return `A primary loses ${t.say(now)} at ${u.say(here)} and ${t.say(low)} at ${u.say(weak)}. A controller that holds the first figure while the second is true takes the difference off every pulse.`
  },
  without: 'Dead times at two voltages are wanted for this drawing.',
})
