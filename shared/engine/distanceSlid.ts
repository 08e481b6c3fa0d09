import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { drivenDistance, sealPathOverRoad } from './quantities.ts'

/** How far an apex seal slides while the car drives a distance. */
export const about = {
  name: 'Distance slid',
  in: { driven: drivenDistance, over: sealPathOverRoad },
  out: role(drivenDistance, 's_s', 'Distance an apex seal slides'),
  equation: 'driven * over',
  source: ['definition', 'path over road'],
} as const satisfies About

export const distanceSlid = formula<typeof about>('distance-slid', {}, ({ driven, over }) => driven * over)
