import { formula, type About } from '../formula/formula.ts'
import { deadTime, fuelPerCharge, injectorMassFlow, pulseWidth } from './quantities.ts'

/** Mass flow that the open injectors need to give a mass of fuel in a pulse. */
export const about = {
  name: 'Mass flow for a pulse',
  in: { fuel: fuelPerCharge, pulse: pulseWidth, deadTime },
  out: injectorMassFlow,
  equation: 'fuel / (pulse - deadTime)',
  source: ['sae-j1832', 'fuel per pulse is a straight line over pulse width, shifted by the dead time'],
  notes: 'Source states no range. The pulse has to be longer than the dead time.',
} as const satisfies About

export const massFlowForPulse = formula<typeof about>('mass-flow-for-pulse', {}, ({ fuel, pulse, deadTime: dead }) => fuel / (pulse - dead))
