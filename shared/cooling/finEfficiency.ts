import { formula, type About } from '../formula/formula.ts'
import { coreFilm, finEfficiencyOf, finThickness, spacerConductivityOf, tubePitch, tubeThickness } from './quantities.ts'

/** A thin fin warmed at both ends, its middle the coolest. `tanh(m l) / (m l)`, `m = √(2 h / (k δ))`, `l` half its length. */
export const about = {
  name: 'Efficiency of a fin',
  in: { film: coreFilm, conductivity: spacerConductivityOf, fin: finThickness, tubePitch, tube: tubeThickness },
  out: finEfficiencyOf,
  equation: 'tanh(sqrt(2 * film / (conductivity * fin)) * (tubePitch - tube) / 2) / (sqrt(2 * film / (conductivity * fin)) * (tubePitch - tube) / 2)',
  source: ['incropera', 'section 3.6, straight fin with an insulated tip, at half the length'],
  sample: { conductivity: [20, 250], tubePitch: [0.007, 0.02], tube: [0.001, 0.005] },
} as const satisfies About

export const finEfficiency = formula<typeof about>('fin-efficiency', {}, ({ film, conductivity, fin, tubePitch: apart, tube }) => { const ml = (Math.sqrt((2 * film) / (conductivity * fin)) * (apart - tube)) / 2; return Math.tanh(ml) / ml })
