import { formula, type About } from '../formula/formula.ts'
import { airMass, carbonMass, hydrogenMass, oxygenInAir, oxygenMass } from './atoms.ts'
import { hydrogenToCarbon, oxygenToCarbon, stoichiometricRatio } from './quantities.ts'

/** Mass of air that burns a mass of fuel completely, from the atoms of the fuel: CH_yO_z. */
export const about = {
  name: 'Stoichiometric ratio from composition',
  in: { hydrogen: hydrogenToCarbon, oxygen: oxygenToCarbon },
  out: stoichiometricRatio,
  constants: { carbonMass, hydrogenMass, oxygenMass, airMass, oxygenInAir },
  equation: '(1 + hydrogen / 4 - oxygen / 2) / oxygenInAir * airMass / (carbonMass + hydrogen * hydrogenMass + oxygen * oxygenMass)',
  source: ['heywood-1988', 'section 3.4, equations 3.4 to 3.6'],
  notes: 'Source states no range. Complete burning with dry air; the oxygen of the fuel itself is counted.',
} as const satisfies About

export const stoichiometricRatioOf = formula<typeof about>('stoichiometric-ratio-of', {}, ({ hydrogen, oxygen }) =>
  ((1 + hydrogen / 4 - oxygen / 2) / oxygenInAir.value) * airMass.value / (carbonMass.value + hydrogen * hydrogenMass.value + oxygen * oxygenMass.value))
