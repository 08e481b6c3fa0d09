import { formula, type About } from '../formula/formula.ts'
import { frictionFactor } from '../fuel/quantities.ts'
import { bendAngle, bendLoss as loss, bendRadius } from './quantities.ts'

/** Loss coefficient of a smooth round bend, its own length included. */
export const about = {
  name: 'Loss of a bend',
  in: { friction: frictionFactor, angle: bendAngle, radius: bendRadius },
  out: loss,
  equation: 'friction * angle * radius + (0.10 + 2.4 * friction) * sin(angle / 2) + 6.6 * friction * (sqrt(sin(angle / 2)) + sin(angle / 2)) / radius^(4 * angle / pi)',
  source: ['rennels-2012', 'chapter 15, elbows and bends; as carried by the library fluids 1.3.1'],
  notes: 'Source: bends of one radius, flow that enters evenly. Two bends close together lose more or less than twice one; a bend just before a compressor also twists the flow into the wheel, which no loss tells.',
  sample: { friction: [0.01, 0.05] },
} as const satisfies About

export const bendLoss = formula<typeof about>('bend-loss', {}, ({ friction, angle, radius }) => {
  const half = Math.sin(angle / 2)
  return friction * angle * radius + (0.1 + 2.4 * friction) * half + (6.6 * friction * (Math.sqrt(half) + half)) / radius ** ((4 * angle) / Math.PI)
})
