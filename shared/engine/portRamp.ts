import { formula, type About } from '../formula/formula.ts'
import { apexAngle, eccentricity, generatingRadius, parallelShift, portHeight, rampAngle } from './quantities.ts'

/** Shaft angle in which an apex crosses a port: from shut to fully open, or back. */
export const about = {
  name: 'Angle in which a port opens',
  in: { height: portHeight, generatingRadius, eccentricity, shift: parallelShift, rotorAngle: apexAngle },
  out: rampAngle,
  equation: '3 * height / (sqrt(generatingRadius^2 + 9 * eccentricity^2 + 6 * eccentricity * generatingRadius * cos(2 * rotorAngle)) + shift)',
  source: ['derived', 'height over path of the apex in each radian of the shaft'],
  notes: 'The apex’s pace is taken as that at the edge it meets first. Exact for a port in the rotor housing that an apex passes; the flank that uncovers a port in the side housing moves at about that pace.',
} as const satisfies About

export const portRamp = formula<typeof about>('port-ramp', {}, ({ height, generatingRadius: R, eccentricity: e, shift, rotorAngle }) =>
  (3 * height) / (Math.sqrt(R * R + 9 * e * e + 6 * e * R * Math.cos(2 * rotorAngle)) + shift))
