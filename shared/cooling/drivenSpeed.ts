import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { pulleyDiameter, pumpShaftSpeed } from './quantities.ts'

/** Speed of a driven pulley, the belt not slipping. */
export const about = {
  name: 'Speed of a driven pulley',
  in: { speed: shaftSpeed, driving: role(pulleyDiameter, 'd_1', 'Driving pulley'), driven: role(pulleyDiameter, 'd_2', 'Driven pulley') },
  out: pumpShaftSpeed,
  equation: 'speed * driving / driven',
  source: ['definition', 'one belt, one speed'],
} as const satisfies About

export const drivenSpeed = formula<typeof about>('driven-speed', {}, ({ speed, driving, driven }) => (speed * driving) / driven)
