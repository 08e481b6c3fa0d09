import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airCapacityRate } from './airCapacityRate.ts'
import { capacityRatio } from './capacityRatio.ts'
import { conductanceFromUnits } from './conductanceFromUnits.ts'
import { coolantCapacityRate } from './coolantCapacityRate.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { effectivenessFromHeat } from './effectivenessFromHeat.ts'
import { inletDifference } from './inletDifference.ts'
import { coolantFlowOf, coolantTemperatureOf, coolerConductance, coreAir, coreAirTemperatureOf, effectivenessValue, glycolVolume, heatFlow } from './quantities.ts'
import { transferUnitsFor } from './transferUnitsFor.ts'

/** Conductance of a radiator from one rated point, by effectiveness and transfer units solved backwards. */
export const about = {
  name: 'Conductance from a rated point',
  in: {
    heat: role(heatFlow, 'Q_0', 'Rated heat'), coolantTemperature: role(coolantTemperatureOf, 'T_c0', 'Coolant inlet of the rating'), airTemperature: role(coreAirTemperatureOf, 'T_a0', 'Air inlet of the rating'),
    air: role(coreAir, 'm_k0', 'Rated air flow'), coolant: role(coolantFlowOf, 'V_c0', 'Rated coolant flow'), glycol: glycolVolume,
  },
  out: { conductance: coolerConductance, effectiveness: effectivenessValue },
  steps: [
    'Capacity rates of both streams at the rating.',
    'Effectiveness: rated heat over the weaker capacity rate times the difference between the inlets.',
    'Transfer units for it in cross flow with both streams unmixed; times the weaker capacity rate.',
  ],
  source: ['kays-london', 'chapter 2, solved backwards'],
  notes: 'The rating is taken to be for the mixture of the sheet.',
} as const satisfies About

export const ratedConductance = formula<typeof about>('rated-conductance', {}, ({ heat, coolantTemperature: temperature, airTemperature, air, coolant, glycol }) => {
  const one = airCapacityRate({ air })
  const other = coolantCapacityRate({ flow: coolant, density: coolantDensity({ temperature, glycol }), specificHeat: coolantSpecificHeat({ temperature, glycol }) })
  const effectiveness = effectivenessFromHeat({ heat, one, other, difference: inletDifference({ hot: temperature, cold: airTemperature }) })
  const units = transferUnitsFor({ arrangement: 'crossUnmixed', effectiveness, ratio: capacityRatio({ one, other }) })
  return { conductance: conductanceFromUnits({ units, one, other }), effectiveness }
})
