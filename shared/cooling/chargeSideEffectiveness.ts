import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, chargeCoolerConductance, effectivenessValue } from './quantities.ts'

/** How far the charge comes to its cooler's core, where charge to air as a whole is rated: the two in series must give the rating. */
export const about = {
  name: 'Effectiveness from charge to core',
  in: { rated: role(effectivenessValue, 'ε_0', 'Rated effectiveness, charge to outside air'), charge: role(capacityRateOf, 'C_h', 'Capacity rate of the charge at the rating'), air: chargeCoolerConductance },
  out: role(effectivenessValue, 'ε_h', 'Effectiveness from charge to core'),
  equation: 'min(1, rated / max(1e-9, 1 - rated * charge / air))',
  source: ['derived', 'one core temperature: heat from charge to core equals heat from core to air, ε C_h (T_2 − T_0) = ε_h C_h (T_2 − T_x) = K_x (T_x − T_0)'],
  notes: 'A core of one temperature stands for one that is warm at its inlet and cool at its outlet. Where no value up to 1 gives the rating, the core’s way to the air is too narrow, and the cooler gives less than its rating.',
} as const satisfies About

export const chargeSideEffectiveness = formula<typeof about>('charge-side-effectiveness', {}, ({ rated, charge, air }) => Math.min(1, rated / Math.max(1e-9, 1 - (rated * charge) / air)))
