import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { beltSpeedOf, pulleyDiameter } from './quantities.ts'

/** Speed of the belt along itself. */
export const about = {
  name: 'Speed of the belt',
  in: { speed: shaftSpeed, driving: role(pulleyDiameter, 'd_1', 'Driving pulley') },
  out: beltSpeedOf,
  equation: 'speed * driving / 2',
  source: ['definition', 'of angular speed'],
  notes: 'Belts of passenger cars are commonly stated for 40 to 60 m/s: ask the maker.',
} as const satisfies About

export const beltSpeedAt = formula<typeof about>('belt-speed-at', {}, ({ speed, driving }) => (speed * driving) / 2)
