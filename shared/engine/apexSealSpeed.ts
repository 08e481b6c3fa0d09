import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { eccentricity, generatingRadius, parallelShift, sealSpeed, shaftAngle, shaftSpeed } from './quantities.ts'

/** Sliding speed of an apex along the housing at one place of its path. */
export const about = {
  name: 'Sliding speed of the apex seal',
  in: { generatingRadius, eccentricity, shift: parallelShift, speed: shaftSpeed, rotorAngle: role(shaftAngle, 'α', 'Rotor angle of the apex from the long axis') },
  out: sealSpeed,
  equation: 'speed / 3 * (sqrt(generatingRadius^2 + 9 * eccentricity^2 + 6 * eccentricity * generatingRadius * cos(2 * rotorAngle)) + shift)',
  source: ['yamamoto-1981', 'sliding velocity of the apex seal; shift: the seal turns with the rotor, at a third of the shaft'],
  notes: 'Source states no range. Fastest across the long axis, slowest at the waist.',
} as const satisfies About

export const apexSealSpeed = formula<typeof about>('apex-seal-speed', {}, ({ generatingRadius: R, eccentricity: e, shift, speed, rotorAngle }) =>
  (speed / 3) * (Math.sqrt(R * R + 9 * e * e + 6 * e * R * Math.cos(2 * rotorAngle)) + shift))
