import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import gradeAndClearance from '@trochoid/compute/oil/gradeAndClearance.calc.ts'
import { diametralClearance, filmThickness, viscosityScale } from '@trochoid/compute/oil/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly film: number; readonly speed: number; readonly twice: number | null }

/** Oil that keeps the film at another clearance, and oil that would keep the journal's place in it: the square of clearance. */
export default lineFigure<Data>({
  title: 'How much thicker an oil another clearance asks',
  says: 'Times as thick over clearance: for the same film, and by the square of clearance.',
  x: diametralClearance, y: viscosityScale,
  from({ sheet, point }) {
    const of: AnyCalculation = gradeAndClearance
    const given = valuesFor(of, sheet, point)
    const here = given['diametral'] as number, speed = given['speed'] as number
    const film = answered(of, given, 'film')
    if (film === null || point['oil.temperature'] === undefined) return null
    const times = (other: number): number | null => answered(of, { ...given, other }, 'times')
    const x = steps(0.6 * here, 2 * here, 14)
    return {
      here, film, speed, twice: times(2 * here), x,
      lines: [{ name: 'For the same film', y: x.map(times) }, { name: 'By the square of clearance', y: x.map((c) => (c / here) ** 2) }],
      marks: [{ says: 'as built', x: here, y: 1, below: true }],
    }
  },
  summary: ({ here, film, speed, twice }, system) =>
    `Rotor bearing under inertia at ${shown(shaftSpeed, system).say(speed)}, film held at ${shown(filmThickness, system).say(film)}. ${twice === null ? 'No oil within reach keeps it at twice the clearance.' : `Twice ${shown(diametralClearance, system).say(here)} asks an oil ${shown(viscosityScale, system).say(twice)} times as thick.`} The square rule keeps the journal at the same share of its clearance, so it asks far more than the film does. Oil temperature before the bearing is the same all along; what a wider gap costs in pressure is not in it.`,
  without: 'The film of this build could not be worked out, so nothing is drawn.',
})
