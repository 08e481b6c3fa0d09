import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { finalDrive, gearRatio, speedInGear, tyreRadius } from './quantities.ts'

/** Road speed at a shaft speed in a gear, clutch and tyres not slipping. `ω r / (i_g i_f)`, m/s. */
export const about = {
  name: 'Road speed in a gear',
  in: { speed: shaftSpeed, ratio: gearRatio, finalDrive, radius: tyreRadius },
  out: speedInGear,
  equation: 'speed * radius / (ratio * finalDrive)',
  source: ['definition', 'of gear ratio and rolling radius'],
  notes: 'A driven tyre slips a few percent at full throttle, and grows at speed.',
} as const satisfies About

export const speedInGearAt = formula<typeof about>('speed-in-gear-at', {}, ({ speed, ratio, finalDrive, radius }) => (speed * radius) / (ratio * finalDrive))
