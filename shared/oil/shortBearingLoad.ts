import { formula, type About } from '../formula/formula.ts'
import { bearingLength, bearingLoad, bearingSpeed, dynamicViscosity, eccentricityRatio, journalDiameter, radialClearance } from './quantities.ts'

/** Load that a short bearing carries at an eccentricity, half-film short-bearing theory. */
export const about = {
  name: 'Load of a short bearing',
  in: { viscosity: dynamicViscosity, speed: bearingSpeed, diameter: journalDiameter, length: bearingLength, clearance: radialClearance, eccentricity: eccentricityRatio },
  out: bearingLoad,
  equation: 'pi * viscosity * speed * diameter * length^3 * eccentricity / (8 * clearance^2 * (1 - eccentricity^2)^2) * sqrt(eccentricity^2 * (16 / pi^2 - 1) + 1)',
  sample: { eccentricity: [0.01, 0.95] },
  source: ['dynamics-of-rotating-machines', 'chapter 5, short bearing (Ocvirk)'],
  notes: 'Good for bearings shorter than about half their diameter.',
} as const satisfies About

export const shortBearingLoad = formula<typeof about>('short-bearing-load', {}, ({ viscosity, speed, diameter, length, clearance, eccentricity: e }) =>
  ((Math.PI * viscosity * speed * diameter * length ** 3 * e) / (8 * clearance ** 2 * (1 - e * e) ** 2)) * Math.sqrt(e * e * (16 / Math.PI ** 2 - 1) + 1))
