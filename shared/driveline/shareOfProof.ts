import { formula, type About } from '../formula/formula.ts'
import { boltPreload, proofShare, proofStress, stressArea } from './quantities.ts'

/** Preload against the load a bolt must bear without lasting stretch. `F / (S_p A_s)`. */
export const about = {
  name: 'Preload over proof load',
  in: { preload: boltPreload, proof: proofStress, area: stressArea },
  out: proofShare,
  equation: 'preload / (proof * area)',
  source: ['definition', 'proof load is proof stress times stress area'],
  notes: 'Torsion from tightening is left out; it uses up a part of the bolt until it settles.',
} as const satisfies About

export const shareOfProof = formula<typeof about>('share-of-proof', {}, ({ preload, proof, area }) => preload / (proof * area))
