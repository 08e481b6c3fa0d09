import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { degC } from '../quantity/si.ts'
import { d341Line } from './d341Line.ts'
import { d341Viscosity } from './d341Viscosity.ts'
import { dynamicFromKinematic } from './dynamicFromKinematic.ts'
import { density15 } from './fields.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { dynamicViscosity, kinematicViscosity, oilDensity, oilTemperature } from './quantities.ts'

export default calculation({
  id: 'viscosity-at-temperature', title: 'Viscosity at a temperature', theme: 'oil',
  asks: 'How thick is this oil at that temperature?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'model-only'],
  in: {
    viscosity1: free(kinematicViscosity, 90e-6, 'First known viscosity'), temperature1: free(oilTemperature, degC(40), 'Its temperature'),
    viscosity2: free(kinematicViscosity, 14e-6, 'Second known viscosity'), temperature2: free(oilTemperature, degC(100), 'Its temperature, second'),
    temperature: free(oilTemperature, degC(120), 'Temperature wanted'), density15,
  },
  out: { viscosity: kinematicViscosity, dynamic: dynamicViscosity, density: oilDensity },
  curve: ['temperature', 'viscosity'],
  answer({ viscosity1, temperature1, viscosity2, temperature2, temperature, density15 }) {
    if (temperature1 === temperature2) throw new NoAnswer('oil', 'Both known viscosities are given at the same temperature: a line needs two.')
    if ((viscosity2 - viscosity1) * (temperature2 - temperature1) >= 0) throw new NoAnswer('oil', 'The warmer of the two points must be the thinner one.')
    const line = d341Line({ viscosity1, temperature1, viscosity2, temperature2 })
    const viscosity = d341Viscosity({ ...line, temperature })
    const density = oilDensityAt({ density15, temperature })
    return { viscosity, density, dynamic: dynamicFromKinematic({ viscosity, density }) }
  },
  says: () => 'At {temperature} it has {viscosity}, or {dynamic} with its density of {density} there.',
  leavesOut: 'Fast shear in a film, fuel, age and, below the pour point, wax.',
})
