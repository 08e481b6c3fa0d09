import { formula, type About } from '../formula/formula.ts'
import { eccentricityRatio, journalDiameter, landLength, leakageFactor, radialClearance } from './quantities.ts'

/** Leakage of a bearing with a groove all round in its middle, both ends together: flow times viscosity over pressure. */
export const about = {
  name: 'Leakage factor of a grooved bearing',
  in: { diameter: journalDiameter, clearance: radialClearance, land: landLength, eccentricity: eccentricityRatio },
  out: leakageFactor,
  equation: 'pi * diameter * clearance^3 * (1 + 1.5 * eccentricity^2) / (6 * land)',
  source: ['shigley-bearings', 'equation 12-22: Q_s = π p_s r c³ (1 + 1.5 ε²) / (3 η l′), groove all round'],
} as const satisfies About

export const grooveLeakage = formula<typeof about>('groove-leakage', {}, ({ diameter, clearance, land, eccentricity }) =>
  (Math.PI * diameter * clearance ** 3 * (1 + 1.5 * eccentricity ** 2)) / (6 * land))
