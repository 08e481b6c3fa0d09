import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import idleQuality from '@trochoid/compute/fuel/idleQuality.calc.ts'
import { fuelSpread, injectorFlow } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly fitted: number; readonly now: number; readonly sum: number; readonly one: number | null; readonly largest: number }

/** How far single shots at idle spread over the size of the injector that gives them. */
export default lineFigure<Data>({
  title: 'Spread of single shots at idle over injector size',
  says: 'Spread of shots at idle over rated flow, for injectors that repeat like the primary and like the secondary.',
  x: injectorFlow, y: fuelSpread, named: { x: 'Rated flow per rotor', y: 'Spread to either side' },
  from({ sheet, solved, point }) {
    const of: AnyCalculation = idleQuality
    const fuel = solved.idle.values['fuel.fuelPerCharge']
    if (fuel === undefined) return null
    const given: Values = { ...valuesFor(of, sheet, point), fuel }
    const fitted = (given['primaryFlow'] as number) * (given['primaries'] as number), sum = fitted + (given['secondaryFlow'] as number) * (given['secondaries'] as number)
    const far = { deadTime: given['secondaryDead']!, smallest: given['secondarySmallest']! }
    const at = (flow: number, like = {}): number | null => answered(of, { ...given, ...like, primaryFlow: flow, primaries: 1 }, 'shots')
    const now = at(fitted), largest = answered(of, given, 'largest')
    if (now === null || largest === null || !(fitted > 0)) return null
    const x = steps(0.5 * fitted, Math.max(1.1 * sum, 1.1 * largest), 24)
    return {
      fitted, now, sum, one: at(sum, far), largest, x,
      lines: [{ name: 'Repeats like the primary', y: x.map((q) => at(q)) }, { name: 'Repeats like the secondary', y: x.map((q) => at(q, far)) }],
      levels: [{ says: 'at the smallest pulse', at: given['spread'] as number, left: true as const }], marks: [{ says: 'primary fitted', x: fitted, y: now, below: true as const }],
      uprights: [{ says: 'one rail, same total', at: sum }],
    }
  },
  summary({ fitted, now, sum, one, largest }, system) {
    const q = shown(injectorFlow, system), s = shown(fuelSpread, system)
    return `The primary fitted, ${q.say(fitted)}, spreads by ${s.say(now)}. One rail with the flow of both stages, ${q.say(sum)}, would spread by ${one === null ? 'no number' : s.say(one)}. Above the dotted level an injector is asked for less than its smallest repeatable pulse; with one like the secondary that begins at ${q.say(largest)} for each rotor, and beyond it the line only says that it is worse.`
  },
  without: 'The idle of this build could not be worked out, so nothing is drawn.',
})
