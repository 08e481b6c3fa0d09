import { formula, type About } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { bearingLength, bearingLoad, bearingSpeed, dynamicViscosity, eccentricityRatio, journalDiameter, radialClearance } from './quantities.ts'
import { shortBearingLoad } from './shortBearingLoad.ts'

/** Eccentricity at which a short bearing carries its load: a check on the tables from an independent theory. */
export const about = {
  name: 'Eccentricity of a short bearing',
  in: { load: bearingLoad, viscosity: dynamicViscosity, speed: bearingSpeed, diameter: journalDiameter, length: bearingLength, clearance: radialClearance },
  out: eccentricityRatio,
  holds: 'load = pi * viscosity * speed * diameter * length^3 * out / (8 * clearance^2 * (1 - out^2)^2) * sqrt(out^2 * (16 / pi^2 - 1) + 1)',
  sample: { speed: [50, 1500], load: [500, 5e4], viscosity: [3e-3, 0.1], clearance: [15e-6, 60e-6], length: [0.02, 0.1] },
  source: ['dynamics-of-rotating-machines', 'chapter 5, short bearing (Ocvirk), solved for the eccentricity'],
} as const satisfies About

export const shortBearingEccentricity = formula<typeof about>('short-bearing-eccentricity', {}, ({ load, ...bearing }) => {
  // In terms of the film share the load falls from without end to nothing, so the bracket always holds the answer.
  const found = untraced(() => bracketedRoot((h) => Math.log(shortBearingLoad({ ...bearing, eccentricity: 1 - h }) / load), 1e-7, 1 - 1e-12, 1e-14))
  return 1 - root('film over clearance', found.x, found.residual)
})
