import { formula, type About } from '../formula/formula.ts'
import { deadTime, fuelPerCharge, injectorMassFlow, pulseWidth } from './quantities.ts'

/** Pulse that gives a wanted mass of fuel. */
export const about = {
  name: 'Pulse for a mass of fuel',
  in: { fuel: fuelPerCharge, flow: injectorMassFlow, deadTime },
  out: pulseWidth,
  equation: 'deadTime + fuel / flow',
  source: ['sae-j1832', 'fuel per pulse is a straight line over pulse width, shifted by the dead time'],
  notes: 'Source states no range. True from the smallest repeatable pulse up to where the needle no longer closes.',
} as const satisfies About

export const pulseFor = formula<typeof about>('pulse-for', {}, ({ fuel, flow, deadTime: dead }) => dead + fuel / flow)
