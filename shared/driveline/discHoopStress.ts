import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { discRadius, discStress, metalDensity, poisson } from './quantities.ts'

/**
 * Hoop stress at a radius of a spinning flat disc with a hole in the middle.
 * `(3 + ν) / 8 ρ ω² (R² + r0² + R² r0² / r² − (1 + 3 ν) / (3 + ν) r²)`, pascals.
 */
export const about = {
  name: 'Hoop stress in a spinning disc',
  in: {
    density: metalDensity, speed: shaftSpeed, poisson, outer: role(discRadius, 'R', 'Outer radius'), hole: role(discRadius, 'r_0', 'Radius of the hole'),
    radius: discRadius,
  },
  out: discStress,
  equation: '(3 + poisson) / 8 * density * speed^2 * (outer^2 + hole^2 + outer^2 * hole^2 / radius^2 - (1 + 3 * poisson) / (3 + poisson) * radius^2)',
  source: ['timoshenko-goodier', 'article 32, equation 55'],
  notes: 'Elastic, even thickness, nothing pulling at the rim; the radius lies between hole and rim.',
  sample: { outer: [mm(120), mm(200)], hole: [mm(10), mm(50)], radius: [mm(50), mm(120)] },
} as const satisfies About

export const discHoopStress = formula<typeof about>('disc-hoop-stress', {}, ({ density, speed, poisson, outer, hole, radius }) =>
  ((3 + poisson) / 8) * density * speed ** 2 * (outer ** 2 + hole ** 2 + (outer * hole / radius) ** 2 - ((1 + 3 * poisson) / (3 + poisson)) * radius ** 2))
