import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { circuitDrop, coolantFlowOf, pumpRise } from './quantities.ts'

/** Flow at which what the pump adds is what the circuit takes, both as squares. */
export const about = {
  name: 'Flow where pump meets circuit',
  in: { shutOff: role(pumpRise, 'Δp_0', 'Rise against a shut valve at the stated speed'), freeFlow: role(coolantFlowOf, 'V_f', 'Flow without any resistance at the stated speed'), drop: circuitDrop, dropFlow: role(coolantFlowOf, 'V_d', 'Flow at which the circuit loses that'), speed: shaftSpeed, ratedSpeed: role(shaftSpeed, 'n_0', 'Stated shaft speed') },
  out: coolantFlowOf,
  equation: 'speed / ratedSpeed * sqrt(shutOff / (shutOff / freeFlow^2 + drop / dropFlow^2))',
  source: ['white-fluid', 'similarity of pumps: rise with the square of speed, flow with speed; circuit loss with the square of flow'],
  notes: 'A curve of the pump that falls as the square of flow; no cavitation. Thus flow goes with shaft speed in one circuit.',
} as const satisfies About

export const circuitFlow = formula<typeof about>('circuit-flow', {}, ({ shutOff, freeFlow, drop, dropFlow, speed, ratedSpeed }) => (speed / ratedSpeed) * Math.sqrt(shutOff / (shutOff / freeFlow ** 2 + drop / dropFlow ** 2)))
