import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { filmFuel, fuelPerCharge, turnTime, wallShare, wallTime } from './quantities.ts'

/** Fuel that the film takes up on its way from one steady state to the next: what an enrichment has to bring. */
export const about = {
  name: 'Fuel that the wall takes up',
  in: {
    before: role(fuelPerCharge, 'm_0', 'Fuel per charge before the step'), after: role(fuelPerCharge, 'm_1', 'Fuel per charge injected after it'),
    wall: wallShare, settling: wallTime, turn: turnTime,
  },
  out: role(filmFuel, 'm_f', 'Fuel for the wall, per rotor'),
  equation: 'wall * (after - before) * settling / turn',
  source: ['aquino-1981', 'steady film mass is X m τ for a fuel flow m (from memory)'],
} as const satisfies About

export const wallStored = formula<typeof about>('wall-stored', {}, ({ before, after, wall, settling, turn }) => (wall * (after - before) * settling) / turn)
