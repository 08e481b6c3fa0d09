import { formula, type About } from '../formula/formula.ts'
import { mm } from '../quantity/si.ts'
import { boltDiameter, stressArea, threadPitch } from './quantities.ts'

/** Area that carries the pull in a metric thread. `π/4 (d − 0.9382 P)²`, m². */
export const about = {
  name: 'Stress area of a metric thread',
  in: { diameter: boltDiameter, pitch: threadPitch },
  out: stressArea,
  equation: 'pi / 4 * (diameter - 0.9382 * pitch)^2',
  source: ['iso-898-1', 'clause 9.1.6, nominal stress area'],
  notes: 'For the ISO metric thread.',
} as const satisfies About

export const threadStressArea = formula<typeof about>('thread-stress-area', { diameter: [mm(1.6), mm(39)] },
  ({ diameter, pitch }) => (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2)
