import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { lambda } from '@trochoid/compute/engine/quantities.ts'
import matchedSet from '@trochoid/compute/fuel/matchedSet.calc.ts'
import { fuelSpread } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly meant: number; readonly worst: number; readonly usual: number }

const spoken = 0.03

/** The leaner and the richer rotor over how far the injectors of both sets differ. */
export default lineFigure<Data>({
  title: 'What the spread of a set does to each rotor',
  says: 'Lambda of the leaner and of the richer rotor over the spread of both sets of injectors.',
  x: fuelSpread, y: lambda, named: { y: 'Lambda' }, zoom: true,
  from({ sheet, point }) {
    const of: AnyCalculation = matchedSet
    if (point['engine.lambda'] === undefined) return null
    const given = valuesFor(of, sheet, point), meant = given['lambda'] as number
    const at = (spread: number, out: string): number | null => answered(of, { ...given, primary: spread, secondary: spread }, out)
    const worst = at(spoken, 'leanWorst'), usual = at(spoken, 'leanUsual')
    if (worst === null || usual === null) return null
    const x = steps(0, 0.08, 16)
    const line = (name: string, out: string) => ({ name, y: x.map((s) => at(s, out)) })
    return { meant, worst, usual, x, lines: [line('Leaner rotor, at worst', 'leanWorst'), line('Leaner, by chance', 'leanUsual'), line('Richer rotor, at worst', 'richWorst')], levels: [{ says: 'meant', at: meant }] }
  },
  summary: ({ meant, worst, usual }, system) => `Both sets differ by the same share, to either side of their mean. At ${Math.round(100 * spoken)}\u202f% a rotor meant for lambda ${shown(lambda, system).say(meant)} may run at ${shown(lambda, system).say(worst)}, and by chance alone is usually near ${shown(lambda, system).say(usual)}. A sensor behind both rotors sees the mean and none of this.`,
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
