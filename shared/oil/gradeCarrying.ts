import { hotGrades } from '../data/oilsGrades.ts'
import { type About, formula } from '../formula/formula.ts'
import { hotGrade, viscosityAt100 } from './quantities.ts'

/** Thinnest hot grade all of whose oils have at least a viscosity at 100 °C. */
export const about = {
  name: 'Grade that carries a viscosity',
  in: { viscosity100: viscosityAt100 },
  out: hotGrade,
  table: 'The least viscosity of each grade of the standard at 100 °C; what grade 60 need not have, none has to.',
  nodes: [
    { in: { viscosity100: 2e-6 }, out: 8 }, { in: { viscosity100: 6.9e-6 }, out: 20 }, { in: { viscosity100: 7e-6 }, out: 30 }, { in: { viscosity100: 9.3e-6 }, out: 30 },
    { in: { viscosity100: 12.5e-6 }, out: 40 }, { in: { viscosity100: 13e-6 }, out: 50 }, { in: { viscosity100: 21.9e-6 }, out: 60 },
  ],
  source: ['sae-j300', 'table 1, least viscosity at 100 °C'],
  notes: 'An oil of the grade below may have that viscosity too: its data sheet tells.',
} as const satisfies About

/** A viscosity that was scaled to a limit is on it, whatever the last figure of a double says. */
const grain = 1e-9
export const gradeCarrying = formula<typeof about>('grade-carrying', {}, ({ viscosity100 }) => hotGrades.find((g) => g.least >= viscosity100 * 1e6 * (1 - grain))?.grade ?? NaN)
