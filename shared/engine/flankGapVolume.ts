import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { arcLength, flankGap, housingWidth, minimumVolume } from './quantities.ts'

/** Volume of the running gap between flank and housing, to first order. */
export const about = {
  name: 'Volume of the flank gap',
  in: { gap: flankGap, flank: role(arcLength, 'L_f', 'Length of a rotor flank'), width: housingWidth },
  out: role(minimumVolume, 'V_g', 'Volume of the flank gap'),
  equation: 'gap * flank * width',
  source: ['derived', 'first order in the gap; the next term is about 0.002 cm³ for 0.2 mm'],
} as const satisfies About

export const flankGapVolume = formula<typeof about>('flank-gap-volume', {}, ({ gap, flank, width }) => gap * flank * width)
