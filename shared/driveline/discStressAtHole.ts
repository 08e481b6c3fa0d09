import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { discRadius, discStress, metalDensity, poisson } from './quantities.ts'

/**
 * Largest stress in a spinning flat disc of even thickness with a round hole in the middle: the hoop stress at the hole's edge.
 * `ρ ω² / 4 ((3 + ν) R² + (1 − ν) r²)`, pascals, r below R.
 */
export const about = {
  name: 'Hoop stress at the hole of a spinning disc',
  in: { density: metalDensity, speed: shaftSpeed, poisson, outer: role(discRadius, 'R', 'Outer radius'), hole: role(discRadius, 'r_0', 'Radius of the hole') },
  out: discStress,
  equation: 'density * speed^2 / 4 * ((3 + poisson) * outer^2 + (1 - poisson) * hole^2)',
  source: ['timoshenko-goodier', 'article 32, rotating disks'],
  notes: 'Elastic, even thickness, nothing pulling at the rim. A stepped flywheel, a pressed ring gear and bolt holes all differ.',
  sample: { outer: [mm(100), mm(200)], hole: [mm(10), mm(90)] },
} as const satisfies About

export const discStressAtHole = formula<typeof about>('disc-stress-at-hole', {},
  ({ density, speed, poisson, outer, hole }) => ((density * speed ** 2) / 4) * ((3 + poisson) * outer ** 2 + (1 - poisson) * hole ** 2))
