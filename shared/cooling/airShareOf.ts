import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airSideShare, coolerConductance } from './quantities.ts'

/** What part of a cooler’s resistance lies on the air’s side. */
export const about = {
  name: 'Share of the resistance on the air’s side',
  in: { whole: coolerConductance, air: role(coolerConductance, 'UA_a', 'Conductance of the air’s side') },
  out: airSideShare,
  equation: 'whole / air',
  source: ['definition', 'resistance of one side over the whole'],
} as const satisfies About

export const airShareOf = formula<typeof about>('air-share-of', {}, ({ whole, air }) => whole / air)
