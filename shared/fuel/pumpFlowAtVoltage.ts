import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { pumpFlow, pumps, pumpVoltage, voltageExponent } from './quantities.ts'

/** Flow of pumps side by side at another voltage than the rated one, at the same pressure. */
export const about = {
  name: 'Pump flow over voltage',
  in: { flow: role(pumpFlow, 'Q_0', 'Flow of one pump at rated voltage'), number: pumps, voltage: pumpVoltage, ratedVoltage: role(pumpVoltage, 'U_0', 'Rated voltage'), exponent: voltageExponent },
  out: pumpFlow,
  equation: 'number * flow * (voltage / ratedVoltage)^exponent',
  source: ['common-practice', 'a power of voltage; two measured flows give the exponent'],
} as const satisfies About

export const pumpFlowAtVoltage = formula<typeof about>('pump-flow-at-voltage', {}, ({ flow, number, voltage, ratedVoltage, exponent }) => number * flow * (voltage / ratedVoltage) ** exponent)
