import { formula, type About } from '../formula/formula.ts'
import { bearingLength, eccentricityRatio, journalDiameter, leakageFactor, radialClearance } from './quantities.ts'

/** Leakage along a round gap from one end to the other, such as a pump spindle or a plain bush: flow times viscosity over pressure. */
export const about = {
  name: 'Leakage factor of a round gap',
  in: { diameter: journalDiameter, clearance: radialClearance, length: bearingLength, eccentricity: eccentricityRatio },
  out: leakageFactor,
  equation: 'pi * diameter * clearance^3 * (1 + 1.5 * eccentricity^2) / (12 * length)',
  source: ['merritt-hydraulic', 'laminar flow in an annulus, concentric or eccentric'],
  notes: 'A spindle lying against one side leaks two and a half times as much as a centred one.',
} as const satisfies About

export const annulusLeakage = formula<typeof about>('annulus-leakage', {}, ({ diameter, clearance, length, eccentricity }) =>
  (Math.PI * diameter * clearance ** 3 * (1 + 1.5 * eccentricity ** 2)) / (12 * length))
