import { formula, type About } from '../formula/formula.ts'
import { finalDrive, gearRatio, tyreRadius } from '../driveline/quantities.ts'
import { sealPathOverRoad as over, sealPathPerTurn } from './quantities.ts'

/** Metres that an apex seal slides for each metre the car drives in a gear. */
export const about = {
  name: 'Seal path over road',
  in: { perTurn: sealPathPerTurn, ratio: gearRatio, finalDrive, radius: tyreRadius },
  out: over,
  equation: 'perTurn * ratio * finalDrive / (2 * pi * radius)',
  source: ['definition', 'shaft turns in a metre times path in a turn'],
  notes: 'Clutch and tyres not slipping.',
} as const satisfies About

export const sealPathOverRoad = formula<typeof about>('seal-path-over-road', {}, ({ perTurn, ratio, finalDrive, radius }) => (perTurn * ratio * finalDrive) / (2 * Math.PI * radius))
