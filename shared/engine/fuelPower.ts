import { formula, type About } from '../formula/formula.ts'
import { fuelFlow, heatingValue as heatingValueOf } from '../fuel/quantities.ts'
import { fuelPowerIn } from './quantities.ts'

/** Chemical power that flows in with the fuel, burned or not. */
export const about = {
  name: 'Chemical power of a fuel flow',
  in: { fuelFlow, heatingValue: heatingValueOf },
  out: fuelPowerIn,
  equation: 'fuelFlow * heatingValue',
  source: ['definition', 'lower heating value: water leaves as vapour'],
} as const satisfies About

export const fuelPower = formula<typeof about>('fuel-power', {}, ({ fuelFlow: flow, heatingValue }) => flow * heatingValue)
