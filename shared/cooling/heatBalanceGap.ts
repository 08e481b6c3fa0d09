import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn, power } from '../engine/quantities.ts'
import { enthalpyFlow } from '../media/quantities.ts'
import { balanceGapOf, heatFlow } from './quantities.ts'

/** What the balance from port to port does not account for. */
export const about = {
  name: 'Gap of the heat balance',
  in: { fuelPower: fuelPowerIn, charge: role(enthalpyFlow, 'H_m', 'Enthalpy flow of the charge above 25 °C'), brake: power, coolant: role(heatFlow, 'Q_c', 'Heat to the coolant'), oil: role(heatFlow, 'Q_o', 'Heat to the oil'), surface: role(heatFlow, 'Q_s', 'Heat from surfaces'), exhaust: role(heatFlow, 'Q_x', 'Heat in the exhaust'), unburned: role(heatFlow, 'Q_u', 'Chemical power left unburned') },
  out: balanceGapOf,
  equation: 'fuelPower + charge - brake - coolant - oil - surface - exhaust - unburned',
  source: ['derived', 'first law, steady flow, port to port, reference 298.15 K'],
  notes: 'The exhaust is the remainder, so the gap is nothing by construction.',
  sample: { brake: [1e4, 3e5], coolant: [1e3, 2e5], oil: [1e3, 1e5], surface: [1e3, 5e4], exhaust: [1e4, 4e5], unburned: [1e3, 2e5], charge: [1e3, 3e4], fuelPower: [1.5e6, 3e6] },
} as const satisfies About

export const heatBalanceGap = formula<typeof about>('heat-balance-gap', {}, ({ fuelPower, charge, brake, coolant, oil, surface, exhaust, unburned }) =>
  fuelPower + charge - brake - coolant - oil - surface - exhaust - unburned)
