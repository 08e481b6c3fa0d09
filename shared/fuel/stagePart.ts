import { formula, type About } from '../formula/formula.ts'
import { fuelPerCharge, stageShare } from './quantities.ts'

/** Fuel of one charge that a stage gives when it has a share. */
export const about = {
  name: 'Fuel of a stage by its share',
  in: { fuel: fuelPerCharge, share: stageShare },
  out: fuelPerCharge,
  equation: 'fuel * share',
  source: ['definition', 'share of a whole'],
} as const satisfies About

export const stagePart = formula<typeof about>('stage-part', {}, ({ fuel, share }) => fuel * share)
