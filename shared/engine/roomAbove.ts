import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { manifoldPressure, readingRoom } from './quantities.ts'

/** What a sensor reads beyond the highest pressure that it has to. */
export const about = {
  name: 'Room above the highest pressure',
  in: { highest: role(manifoldPressure, 'p_hi', 'Highest pressure the sensor reads'), needed: role(manifoldPressure, 'p_need', 'Highest pressure that must be read') },
  out: readingRoom,
  equation: 'highest - needed',
  source: ['definition', 'difference'],
} as const satisfies About

export const roomAbove = formula<typeof about>('room-above', {}, ({ highest, needed }) => highest - needed)
