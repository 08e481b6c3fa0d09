import { type About, formula } from '../formula/formula.ts'
import { hoseSwelling, hoseWall, lineBore, wallModulus } from './quantities.ts'

/** How much the bore of a thin tube swells with pressure, as a share of its volume for each unit of pressure. */
export const about = {
  name: 'Swelling of a tube',
  in: { bore: lineBore, wall: hoseWall, modulus: wallModulus },
  out: hoseSwelling,
  equation: 'bore / (modulus * wall)',
  source: ['wylie-streeter', 'thin-walled elastic tube free to lengthen (from memory)'],
  notes: 'For metal tubes and plain plastic. A braided hose is better measured: its maker states a volume for each length and pressure.',
} as const satisfies About

export const tubeCompliance = formula<typeof about>('tube-compliance', {}, ({ bore, wall, modulus }) => bore / (modulus * wall))
