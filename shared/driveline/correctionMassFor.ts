import { formula, type About } from '../formula/formula.ts'
import { correctionMass, correctionRadius, unbalance } from './quantities.ts'

/** Mass that corrects an unbalance at a radius. `U / r`, kilograms. */
export const about = {
  name: 'Mass that corrects an unbalance',
  in: { unbalance, radius: correctionRadius },
  out: correctionMass,
  equation: 'unbalance / radius',
  source: ['iso-21940-11', 'correction of an unbalance in one plane'],
  notes: 'One plane. On a part that is wide along the shaft two planes are needed.',
} as const satisfies About

export const correctionMassFor = formula<typeof about>('correction-mass-for', {}, ({ unbalance: amount, radius }) => amount / radius)
