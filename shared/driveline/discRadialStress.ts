import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { discRadius, discStress, metalDensity, poisson } from './quantities.ts'

/**
 * Radial stress at a radius of a spinning flat disc with a hole in the middle.
 * `(3 + ν) / 8 ρ ω² (R² + r0² − R² r0² / r² − r²)`, pascals: nothing at the hole and at the rim.
 */
export const about = {
  name: 'Radial stress in a spinning disc',
  in: {
    density: metalDensity, speed: shaftSpeed, poisson, outer: role(discRadius, 'R', 'Outer radius'), hole: role(discRadius, 'r_0', 'Radius of the hole'),
    radius: discRadius,
  },
  out: role(discStress, 'σ_r', 'Radial stress'),
  equation: '(3 + poisson) / 8 * density * speed^2 * (outer^2 + hole^2 - outer^2 * hole^2 / radius^2 - radius^2)',
  source: ['timoshenko-goodier', 'article 32, equation 54'],
  notes: 'Elastic, even thickness, nothing pulling at the rim; the radius lies between hole and rim.',
  sample: { outer: [mm(150), mm(200)], hole: [mm(10), mm(40)], radius: [mm(60), mm(120)] },
} as const satisfies About

export const discRadialStress = formula<typeof about>('disc-radial-stress', {}, ({ density, speed, poisson, outer, hole, radius }) =>
  ((3 + poisson) / 8) * density * speed ** 2 * (outer ** 2 + hole ** 2 - (outer * hole / radius) ** 2 - radius ** 2))
