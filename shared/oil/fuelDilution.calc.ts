import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { dilutedViscosity } from './dilutedViscosity.ts'
import { dilutionToLimit } from './dilutionToLimit.ts'
import { density15, fuelInOil, grade } from './fields.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { gradeLimits } from './gradeLimits.ts'
import { hotGradeOf } from './hotGradeOf.ts'
import { at } from './point.ts'
import { dilution, dynamicViscosity, hotGrade, kinematicViscosity, viscosityAt100, viscosityAt40, viscosityLoss } from './quantities.ts'
import { viscosityLossOf } from './viscosityLossOf.ts'

export default calculation({
  id: 'fuel-dilution', title: 'Fuel in the oil', theme: 'oil',
  asks: 'How much viscosity does this much fuel cost, and how much would take the oil out of its grade?',
  article: 'dilution-sampling-and-change-intervals', cautions: ['waste-oil', 'hot-oil', 'fuel-vapour', 'model-only'],
  in: { grade, fresh40: free(viscosityAt40, 95e-6, 'Fresh oil at 40 °C'), fresh100: free(viscosityAt100, 14.2e-6, 'Fresh oil at 100 °C'), share: fuelInOil, temperature: at.oilTemperature, density15 },
  out: {
    viscosity40: role(kinematicViscosity, 'ν_40', 'With fuel, at 40 °C'), viscosity100: role(kinematicViscosity, 'ν_100', 'With fuel, at 100 °C'), loss: viscosityLoss,
    here: role(dynamicViscosity, 'η', 'Low-shear viscosity at this temperature'), grades: hotGrade, leaves: role(dilution, 'x_l', 'Fuel that takes it out of its grade'),
  },
  curve: ['share', 'viscosity100'],
  mayLack: ['grades'],
  answer({ grade, fresh40, fresh100, share, temperature, density15 }) {
    if (!(fresh100 < fresh40)) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
    const { viscosity40, viscosity100 } = dilutedViscosity({ share, viscosity40: fresh40, viscosity100: fresh100 })
    return {
      viscosity40, viscosity100, loss: viscosityLossOf({ fresh: fresh100, now: viscosity100 }), here: filmAtTemperature({ viscosity40, viscosity100, density15, share: 1, temperature }),
      grades: hotGradeOf({ viscosity100 }), leaves: dilutionToLimit({ viscosity: fresh100, limit: gradeLimits({ grade }).least }),
    }
  },
  says: ({ share, leaves }) => `With {share} of fuel {viscosity100} are left at 100 °C, {loss} less than fresh${share > leaves ? ': it is no longer {grade}' : '; from {leaves} on it is no longer {grade}'}. A flash point that fell says the same as a viscosity that fell.`,
  leavesOut: 'Which part of the fuel stays: the light part leaves in an hour of hot running, the heavy part hardly ever. Ethanol and water behave otherwise. Fuel below 2 mm²/s is an extrapolation of the rule.',
})
