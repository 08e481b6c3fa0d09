import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import premixMixture from '@trochoid/compute/fuel/premixMixture.calc.ts'
import { fuelChange, premixShare } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly wanted: number; readonly now: number; readonly end: readonly [number, number] }

const most = 0.04

/** How far lambda moves at the same pulses as oil is added, for the build's fuel and for one of 85 % ethanol. */
export default lineFigure<Data>({
  title: 'How far premix moves lambda at the same pulses',
  says: 'Shift of lambda over oil share for the fuel of the build and for one of 85 % ethanol.',
  x: premixShare, y: fuelChange, named: { y: 'Shift of lambda' },
  from({ sheet, point }) {
    const of: AnyCalculation = premixMixture
    const given = valuesFor(of, sheet, point), wanted = given['share'] as number
    const shift = (share: number, ethanol?: number): number | null => answered(of, { ...given, share, ...(ethanol !== undefined && { ethanolShare: ethanol }) }, 'shift')
    const x = steps(0, most, 16)
    const now = shift(wanted), own = shift(most), other = shift(most, 0.85)
    if (now === null || own === null || other === null) return null
    return { wanted, now, end: [own, other], x, lines: [{ name: 'Fuel of this build', y: x.map((s) => shift(s)) }, { name: '85 % ethanol', y: x.map((s) => shift(s, 0.85)) }], marks: wanted > 0 && wanted < most ? [{ says: 'wanted here', x: wanted, y: now }] : [] }
  },
  summary({ wanted, now, end }, system) {
    const d = shown(fuelChange, system), s = shown(premixShare, system)
    return `At ${s.say(wanted)} lambda moves by ${d.say(now)}. At ${s.say(most)}, 25 to 1, it would move by ${d.say(end[0])} on this fuel and by ${d.say(end[1])} on one of 85 % ethanol, because oil needs far more air than ethanol does. Minus is toward rich.`
  },
  without: 'The mixture of this build could not be worked out, so nothing is drawn.',
})
