import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { lambda, manifoldPressure } from '../engine/quantities.ts'
import { fuelPerCharge, handoverPressure } from './quantities.ts'

/** Fuel per charge at the same shaft speed when the manifold stands at the hand-over pressure. */
export const about = {
  name: 'Fuel per charge at hand-over',
  in: { fuel: fuelPerCharge, manifold: manifoldPressure, handover: handoverPressure, lambda, handoverLambda: role(lambda, 'λ_h', 'Lambda at hand-over') },
  out: fuelPerCharge,
  equation: 'fuel * handover / manifold * lambda / handoverLambda',
  source: ['derived', 'air per charge goes with manifold pressure, fuel with air over lambda'],
  notes: 'Volumetric efficiency and charge temperature are taken as those of full throttle at this speed.',
} as const satisfies About

export const fuelAtHandover = formula<typeof about>('fuel-at-handover', {}, ({ fuel, manifold, handover, lambda: now, handoverLambda }) => (((fuel * handover) / manifold) * now) / handoverLambda)
