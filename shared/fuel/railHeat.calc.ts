import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { boltHeat } from '../cooling/boltHeat.ts'
import { differenceBetween } from '../cooling/differenceBetween.ts'
import { heatSum } from '../cooling/heatSum.ts'
import { materialConductivity } from '../cooling/materialConductivity.ts'
import { boltArea, contactCoefficient, heatFlow, joinedArea, spacerMaterial, spacerThickness, surfaceTemperatureOf } from '../cooling/quantities.ts'
import { spacerHeat } from '../cooling/spacerHeat.ts'
import { role } from '../quantity/quantity.ts'
import { degC, lPerH, mm } from '../quantity/si.ts'
import { fuelMassFlowOf } from './fuelMassFlowOf.ts'
import { at } from './point.ts'
import { fuelSpecificHeat, fuelTemperature, fuelVolumeFlow } from './quantities.ts'
import { streamRise } from './streamRise.ts'
import { warmedFuel } from './warmedFuel.ts'

export default calculation({
  id: 'rail-heat',
  title: 'Heat into the rail through its spacers',
  theme: 'fuel',
  asks: 'How much heat reaches the rail through spacers and bolts, and how warm does the fuel become on its way, at idle and at full flow?',
  article: 'keeping-heat-and-pulses-out-of-the-fuel',
  cautions: ['fuel-vapour', 'hot-metal', 'model-only'],
  in: {
    hot: free(surfaceTemperatureOf, degC(95), 'Manifold under the rail'), material: free(spacerMaterial, 'phenolic'), thickness: free(spacerThickness, mm(6)), area: free(joinedArea, 6e-4, 'Area of the spacers together'), contact: free(contactCoefficient, 3000),
    boltMaterial: free(spacerMaterial, 'steel', 'Material of the bolts'), boltArea: free(boltArea, 6e-5), inlet: free(fuelTemperature, degC(35), 'Fuel from the tank'), other: free(heatFlow, 150, 'Heat from air and radiation'),
    still: free(fuelVolumeFlow, lPerH(60), 'Flow through the rail at idle'), pumped: at.pumpFlow, density: at.density, specificHeat: free(fuelSpecificHeat, 2100),
  },
  out: {
    spacers: role(heatFlow, 'Q_s', 'Heat through the spacers'), bolts: role(heatFlow, 'Q_b', 'Heat through the bolts'), heat: role(heatFlow, 'Q', 'Heat into the rail'),
    idle: role(fuelTemperature, 'T_i', 'Fuel leaving the rail at idle'), full: role(fuelTemperature, 'T_f', 'Fuel leaving the rail at full flow'),
  },
  curve: ['thickness', 'idle'],
  answer({ hot, material, thickness, area, contact, boltMaterial, boltArea: boltsArea, inlet, other, still, pumped, density, specificHeat }) {
    if (!(still > 0) || !(pumped > 0)) throw new NoAnswer('rail-heat', 'Nothing flows through the rail: it takes the temperature of what it is bolted to.')
    // The rail is taken at the temperature at which fuel enters it: the heat is the most there can be.
    const difference = differenceBetween({ hot, cold: inlet })
    const spacers = spacerHeat({ difference, thickness, conductivity: materialConductivity({ material }), area, contact })
    const bolts = boltHeat({ difference, length: thickness, conductivity: materialConductivity({ material: boltMaterial }), area: boltsArea })
    const heat = heatSum({ one: heatSum({ one: spacers, other: bolts }), other })
    const after = (flow: number): number => warmedFuel({ temperature: inlet, rise: streamRise({ heat, flow: fuelMassFlowOf({ volumeFlow: flow, density }), specificHeat }) })
    return { spacers, bolts, heat, idle: after(still), full: after(pumped) }
  },
  says: ({ bolts, spacers }) => `{spacers} come through the spacers and {bolts} by the bolts; with {other} from around, fuel leaves the rail at {idle} at idle and at {full} at full flow.${bolts > spacers ? ' The bolts bring more than the spacers: washers and bushes under them would do more than a thicker spacer.' : ''}`,
  leavesOut: 'After a hot stop nothing flows: the rail then climbs towards what it is bolted to, which is what the vapour margin asks about.',
})
