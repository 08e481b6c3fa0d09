import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import fuelDilution from '@trochoid/compute/oil/fuelDilution.calc.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import { dilution, viscosityAt100 } from '@trochoid/compute/oil/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly share: number; readonly fresh: number; readonly now: number; readonly leaves: number | null; readonly grade: string }

/** Viscosity at 100 °C over fuel in the oil, with the thin edge of the grade. */
export default lineFigure<Data>({
  title: 'What fuel in the oil costs',
  says: 'Viscosity at 100 °C over the share of fuel in the oil, with the least of the grade and of the one below.',
  x: dilution, y: viscosityAt100, zoom: true,
  from({ sheet, point }) {
    const of: AnyCalculation = fuelDilution
    const given = valuesFor(of, sheet, point)
    const share = given['share'] as number, grade = given['grade'] as string
    const at = (x: number): number | null => answered(of, { ...given, share: x }, 'viscosity100')
    const fresh = at(0), now = at(share), { least } = gradeLimits({ grade })
    if (fresh === null || now === null) return null
    const x = steps(0, 0.1, 20)
    return {
      share, fresh, now, leaves: answered(of, given, 'leaves'), grade, x, lines: [{ name: 'Oil of the card', y: x.map(at) }],
      levels: Number.isFinite(least) && least > at(0.1)! ? [{ says: `least of ${grade}`, at: least }] : [], marks: share <= 0.1 ? [{ says: 'in the sump now', x: share, y: now }] : [],
    }
  },
  summary({ share, fresh, now, leaves, grade }, system) {
    const nu = shown(viscosityAt100, system), d = shown(dilution, system)
    return `Fresh the oil of the card has ${nu.say(fresh)} at 100 °C; with ${d.say(share)} of fuel ${nu.say(now)}.${leaves === null ? '' : ` From ${d.say(leaves)} on it is no longer ${grade}.`} Fuel lies below the range of the blending rule, so this is an extrapolation.`
  },
  without: 'The oil of this build could not be worked out, so nothing is drawn.',
})
