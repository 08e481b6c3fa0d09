import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { rimSpeed, ringOuterDiameter } from './quantities.ts'

/** Speed of the rim of a turning part. `ω D / 2`, m/s. Stress goes with its square, whatever the size. */
export const about = {
  name: 'Rim speed',
  in: { diameter: ringOuterDiameter, speed: shaftSpeed },
  out: rimSpeed,
  equation: 'speed * diameter / 2',
  source: ['definition', 'of angular speed'],
} as const satisfies About

export const rimSpeedOf = formula<typeof about>('rim-speed-of', {}, ({ diameter, speed }) => (speed * diameter) / 2)
