import { aluminiumSpecificHeat, ironSpecificHeat } from '../formula/constants.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { storedPerKelvin, warmedMass } from './quantities.ts'

/** Heat that the metal of an engine stores for each kelvin. */
export const about = {
  name: 'Heat capacity of the metal',
  in: { aluminium: role(warmedMass, 'm_Al', 'Mass of aluminium'), iron: role(warmedMass, 'm_Fe', 'Mass of iron') },
  out: storedPerKelvin,
  constants: { aluminiumSpecificHeat, ironSpecificHeat },
  equation: 'aluminium * aluminiumSpecificHeat + iron * ironSpecificHeat',
  source: ['definition', 'of specific heat'],
} as const satisfies About

export const metalHeatCapacity = formula<typeof about>('metal-heat-capacity', {}, ({ aluminium, iron }) => aluminium * aluminiumSpecificHeat.value + iron * ironSpecificHeat.value)
