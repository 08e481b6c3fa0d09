import { calculation, free } from '../calculation/calculation.ts'
import { degC } from '../quantity/si.ts'
import { coolantConductivity } from './coolantConductivity.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { coolantViscosity } from './coolantViscosity.ts'
import { glycol } from './fields.ts'
import { freezingPoint } from './freezingPoint.ts'
import { glycolMassShare } from './glycolMassShare.ts'
import { coolantConductivityOf, coolantDensityOf, coolantHeatCapacity, coolantTemperatureOf, coolantViscosityOf, freezingPointOf, glycolMass } from './quantities.ts'

/** What a share of glycol does to the coolant. */
export default calculation({
  id: 'coolant-mixture',
  title: 'Coolant mixture',
  theme: 'cooling',
  asks: 'What does this share of glycol make of the coolant?',
  article: 'coolant-mixture-and-boil-margin',
  cautions: ['hot-pressurised-coolant', 'waste-oil'],
  in: { glycol, temperature: free(coolantTemperatureOf, degC(90)) },
  out: { freezing: freezingPointOf, mass: glycolMass, density: coolantDensityOf, specificHeat: coolantHeatCapacity, conductivity: coolantConductivityOf, viscosity: coolantViscosityOf },
  curve: ['glycol', 'specificHeat'],
  answer({ glycol, temperature }) {
    return {
      freezing: freezingPoint({ glycol }), mass: glycolMassShare({ glycol }), density: coolantDensity({ temperature, glycol }),
      specificHeat: coolantSpecificHeat({ temperature, glycol }), conductivity: coolantConductivity({ temperature, glycol }), viscosity: coolantViscosity({ temperature, glycol }),
    }
  },
  says: ({ glycol }) => glycol < 0.25
    ? 'It carries heat well, {specificHeat} at {temperature}, but ice forms at {freezing}, and with this little glycol additives must guard against rust on their own.'
    : 'Ice forms at {freezing}. At {temperature} each kilogram carries {specificHeat}; more glycol would carry less and flow thicker.',
  leavesOut: 'additives, age, and propylene glycol, which is another table',
})
