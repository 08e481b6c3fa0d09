import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantTemperatureOf, thermostatOpening } from './quantities.ts'


/** Part of the pump’s flow that goes to the radiator. */
export const about = {
  name: 'Opening of the thermostat',
  in: { temperature: coolantTemperatureOf, opens: role(coolantTemperatureOf, 'T_t0', 'Begins to open'), open: role(coolantTemperatureOf, 'T_t1', 'Fully open') },
  out: thermostatOpening,
  equation: 'max(0, min(1, (temperature - opens) / (open - opens)))',
  source: ['common-practice', 'straight line between first movement and full travel'],
  sample: { opens: [330, 360], open: [361, 390] },
} as const satisfies About

export const thermostatShare = formula<typeof about>('thermostat-share', {}, ({ temperature, opens, open }) => Math.max(0, Math.min(1, (temperature - opens) / (open - opens))))
