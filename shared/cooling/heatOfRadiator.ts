import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airCapacityRate } from './airCapacityRate.ts'
import { capacityRatio } from './capacityRatio.ts'
import { conductanceAtFlows } from './conductanceAtFlows.ts'
import { coolantCapacityRate } from './coolantCapacityRate.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { effectivenessCrossUnmixed } from './effectivenessCrossUnmixed.ts'
import { exchangedHeat } from './exchangedHeat.ts'
import { inletDifference } from './inletDifference.ts'
import { airSideShare, coolantFlowOf, coolantTemperatureOf, coolerConductance, coreAir, coreAirTemperatureOf, flowExponent, glycolVolume, heatFlow } from './quantities.ts'
import { transferUnits } from './transferUnits.ts'

/** Heat that a radiator casts off at given flows and inlet temperatures, from its conductance at a rating. */
export const about = {
  name: 'Heat of the radiator',
  in: {
    temperature: coolantTemperatureOf, coolant: coolantFlowOf, glycol: glycolVolume, air: coreAir, airTemperature: coreAirTemperatureOf,
    conductance: role(coolerConductance, 'UA_0', 'Rated conductance'), airShare: airSideShare, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), airExponent: role(flowExponent, 'm_a', 'Air-side exponent'),
    ratedCoolant: role(coolantFlowOf, 'V_c0', 'Rated coolant flow'), coolantExponent: role(flowExponent, 'm_c', 'Coolant-side exponent'),
  },
  out: heatFlow,
  steps: [
    'Capacity rates of both streams; the coolant’s density and specific heat at its temperature, held beyond 125 °C.',
    'Conductance at these flows.',
    'Transfer units and capacity ratio, effectiveness in cross flow with both streams unmixed.',
    'Heat: effectiveness times the weaker capacity rate times the difference between the inlets. No flow, no heat.',
  ],
  source: ['kays-london', 'chapter 2'],
} as const satisfies About

/** The coolant table ends at 100 °C and is carried on straight to here; farther would mean nothing. */
const lastProperty = 398.15

export const heatOfRadiator = formula<typeof about>('heat-of-radiator', {}, ({ temperature, coolant, glycol, air, airTemperature, conductance, ...rest }) => {
  if (coolant <= 0 || air <= 0) return 0
  const at = Math.min(temperature, lastProperty)
  const one = airCapacityRate({ air })
  const other = coolantCapacityRate({ flow: coolant, density: coolantDensity({ temperature: at, glycol }), specificHeat: coolantSpecificHeat({ temperature: at, glycol }) })
  const units = transferUnits({ conductance: conductanceAtFlows({ rated: conductance, air, coolant, ...rest }), one, other })
  const effectiveness = effectivenessCrossUnmixed({ units, ratio: capacityRatio({ one, other }) })
  return exchangedHeat({ effectiveness, one, other, difference: inletDifference({ hot: temperature, cold: airTemperature }) })
})
