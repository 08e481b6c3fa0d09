import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { power } from '../engine/quantities.ts'
import { enthalpyFlow } from '../media/quantities.ts'
import { heatFlow } from './quantities.ts'

/**
 * Sensible heat that leaves through the exhaust ports: the remainder of the energy balance of the engine from port to port.
 * Control volume: everything between the intake ports and the exhaust ports, coolant jackets and oil ways outside it. Enthalpies
 * count from 298.15 K. It closes by construction, which proves the bookkeeping and not the split.
 */
export const about = {
  name: 'Heat in the exhaust, as the remainder',
  in: {
    released: role(heatFlow, 'Q_r', 'Heat released'), charge: role(enthalpyFlow, 'H_m', 'Enthalpy flow of the charge above 25 °C'), brake: power,
    coolant: role(heatFlow, 'Q_c', 'Heat to the coolant'), oil: role(heatFlow, 'Q_o', 'Heat to the oil'), surface: role(heatFlow, 'Q_s', 'Heat from surfaces'),
  },
  out: role(heatFlow, 'Q_x', 'Heat in the exhaust'),
  equation: 'released + charge - brake - coolant - oil - surface',
  source: ['derived', 'first law, steady flow, port to port, reference 298.15 K'],
  notes: 'Friction is inside the volume: what it turns to heat leaves with oil and coolant, and is part of their shares.',
} as const satisfies About

export const exhaustHeat = formula<typeof about>('exhaust-heat', {}, ({ released, charge, brake, coolant, oil, surface }) => released + charge - brake - coolant - oil - surface)
