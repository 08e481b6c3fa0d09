import { formula, type About } from '../formula/formula.ts'
import { carbonDioxideFormation, carbonMass, hydrogenMass, oxygenMass, steamFormation } from './atoms.ts'
import { formationEnergy, heatingValue, hydrogenToCarbon, oxygenToCarbon } from './quantities.ts'

/** Lower heating value of a fuel CH_yO_z from its energy of formation, water leaving as steam. */
export const about = {
  name: 'Heating value from energy of formation',
  in: { hydrogen: hydrogenToCarbon, oxygen: oxygenToCarbon, formation: formationEnergy },
  out: heatingValue,
  constants: { carbonMass, hydrogenMass, oxygenMass, carbonDioxideFormation, steamFormation },
  equation: 'formation - (carbonDioxideFormation + hydrogen / 2 * steamFormation) / (carbonMass + hydrogen * hydrogenMass + oxygen * oxygenMass)',
  source: ['heywood-1988', 'section 3.5'],
  notes: 'Source states no range. Energies of formation at 25 °C.',
} as const satisfies About

export const heatingValueOf = formula<typeof about>('heating-value-of', {}, ({ hydrogen, oxygen, formation }) =>
  formation - (carbonDioxideFormation.value + (hydrogen / 2) * steamFormation.value) / (carbonMass.value + hydrogen * hydrogenMass.value + oxygen * oxygenMass.value))
