import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { unbalance, unbalanceForce } from './quantities.ts'

/** Force with which an unbalance turns round the shaft. `U ω²`, newtons. */
export const about = {
  name: 'Force of an unbalance',
  in: { unbalance, speed: shaftSpeed },
  out: unbalanceForce,
  equation: 'unbalance * speed^2',
  source: ['definition', 'centripetal force of an offset mass'],
} as const satisfies About

export const unbalanceForceAt = formula<typeof about>('unbalance-force-at', {}, ({ unbalance, speed }) => unbalance * speed ** 2)
