import { hotGrades } from '../data/oilsGrades.ts'
import { type About, formula } from '../formula/formula.ts'
import { hotGrade, viscosityAt100 } from './quantities.ts'

/** Hot number of the grade in which a viscosity at 100 °C lies; where two overlap, the higher. */
export const about = {
  name: 'Hot grade of a viscosity',
  in: { viscosity100: viscosityAt100 },
  out: hotGrade,
  table: 'The viscosity limits of the standard at 100 °C; below grade 8 and from the end of grade 60 on there is none.',
  nodes: [
    { in: { viscosity100: 6.9e-6 }, out: 20 }, { in: { viscosity100: 9.3e-6 }, out: 30 }, { in: { viscosity100: 12.4e-6 }, out: 30 }, { in: { viscosity100: 12.5e-6 }, out: 40 },
    { in: { viscosity100: 16.3e-6 }, out: 50 }, { in: { viscosity100: 21.9e-6 }, out: 60 }, { in: { viscosity100: 4.5e-6 }, out: 8 },
  ],
  source: ['sae-j300', 'table 1, viscosity at 100 °C'],
  notes: 'By this viscosity alone: an oil also has to keep the high-shear viscosity of its grade.',
} as const satisfies About

/** A viscosity that was scaled to a limit is on it, whatever the last figure of a double says. */
const grain = 1e-9
export const hotGradeOf = formula<typeof about>('hot-grade-of', {}, ({ viscosity100 }) => {
  const nu = viscosity100 * 1e6 * (1 + grain)
  const inside = hotGrades.filter((g) => nu >= g.least && nu < g.most)
  return inside[inside.length - 1]?.grade ?? NaN
})
