import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPerCharge, wallShare, wallTime } from './quantities.ts'

/** Fuel that reaches the chamber some time after the injected fuel stepped up: the film on the wall fills first. */
export const about = {
  name: 'Fuel that arrives after a step',
  in: {
    before: role(fuelPerCharge, 'm_0', 'Fuel per charge before the step'), after: role(fuelPerCharge, 'm_1', 'Fuel per charge injected after it'),
    wall: wallShare, settling: wallTime, time: role(wallTime, 't', 'Time since the step'),
  },
  out: role(fuelPerCharge, 'm_d', 'Fuel per charge that arrives'),
  equation: 'after - wall * (after - before) * exp(-time / settling)',
  source: ['aquino-1981', 'film mass: dm/dt = X m_inj - m / τ; arriving: (1 - X) m_inj + m / τ; solved for a step (from memory)'],
  notes: 'Source states no range. Both parameters hold for one speed, load and wall temperature; a cold wall makes both larger.',
} as const satisfies About

export const wallDelivered = formula<typeof about>('wall-delivered', {}, ({ before, after, wall, settling, time }) => after - wall * (after - before) * Math.exp(-time / settling))
