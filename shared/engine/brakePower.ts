import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indicated, lostPower, power } from './quantities.ts'

/** What is left at the shaft. */
export const about = {
  name: 'Brake power',
  in: { indicated, friction: role(lostPower, 'P_f', 'Friction power'), pumping: role(lostPower, 'P_p', 'Pumping power') },
  out: power,
  equation: 'indicated - friction - pumping',
  source: ['definition', 'brake power is indicated power less friction and pumping'],
} as const satisfies About

export const brakePower = formula<typeof about>('brake-power', {}, ({ indicated: gas, friction, pumping }) => gas - friction - pumping)
