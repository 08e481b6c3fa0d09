import { formula, type About } from '../formula/formula.ts'
import { type Constant } from '../formula/constants.ts'
import { glycolMass, waterMole } from './quantities.ts'

const waterMolarMass: Constant = { name: 'molar mass of water', symbol: 'M_w', value: 18.01528e-3, unit: 'kg/mol', source: 'IUPAC atomic weights 2021' }
const glycolMolarMass: Constant = { name: 'molar mass of ethylene glycol', symbol: 'M_g', value: 62.0678e-3, unit: 'kg/mol', source: 'IUPAC atomic weights 2021' }

/** Share of water by molecules: glycol is heavy, so half by mass is little more than a fifth by molecules. */
export const about = {
  name: 'Mole share of water in coolant',
  in: { glycol: glycolMass },
  out: waterMole,
  equation: '((1 - glycol) / waterMolar) / ((1 - glycol) / waterMolar + glycol / glycolMolar)',
  constants: { waterMolar: waterMolarMass, glycolMolar: glycolMolarMass },
  source: ['definition', 'amount of substance from mass'],
} as const satisfies About

export const waterMoleShare = formula<typeof about>('water-mole-share', {}, ({ glycol }) => {
  const water = (1 - glycol) / waterMolarMass.value
  return water / (water + glycol / glycolMolarMass.value)
})
