import { calculation, free } from '../calculation/calculation.ts'
import { degC } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRatio } from './capacityRatio.ts'
import { cooledOutlet } from './cooledOutlet.ts'
import { differenceBetween } from './differenceBetween.ts'
import { effectivenessOf } from './effectivenessOf.ts'
import { exchangedHeat } from './exchangedHeat.ts'
import { arrangement, capacityRateOf, capacityRatioOf, coolerConductance, effectivenessValue, heatFlow, surfaceTemperatureOf, transferUnitsOf } from './quantities.ts'
import { transferUnits } from './transferUnits.ts'
import { warmedOutlet } from './warmedOutlet.ts'

/** Any cooler from its conductance, by effectiveness and transfer units. */
export default calculation({
  id: 'effectiveness-ntu',
  title: 'A cooler by effectiveness and transfer units',
  theme: 'cooling',
  asks: 'What does a cooler of a given conductance do with these two streams?',
  article: 'sizing-the-radiator',
  cautions: ['model-only'],
  in: {
    arrangement: free(arrangement, 'crossUnmixed'), conductance: free(coolerConductance, 2500),
    hotRate: free(capacityRateOf, 7000, 'Capacity rate of the hot stream'), coldRate: free(capacityRateOf, 2000, 'Capacity rate of the cold stream'),
    hotIn: free(surfaceTemperatureOf, degC(95), 'Hot stream at its inlet'), coldIn: free(surfaceTemperatureOf, degC(30), 'Cold stream at its inlet'),
  },
  out: {
    units: transferUnitsOf, ratio: capacityRatioOf, effectiveness: effectivenessValue, heat: heatFlow,
    hotOut: role(surfaceTemperatureOf, 'T_ho', 'Hot stream at its outlet'), coldOut: role(surfaceTemperatureOf, 'T_co', 'Cold stream at its outlet'),
  },
  curve: ['conductance', 'effectiveness'],
  answer({ arrangement, conductance, hotRate, coldRate, hotIn, coldIn }) {
    const units = transferUnits({ conductance, one: hotRate, other: coldRate })
    const ratio = capacityRatio({ one: hotRate, other: coldRate })
    const effectiveness = effectivenessOf({ arrangement, units, ratio })
    const heat = exchangedHeat({ effectiveness, one: hotRate, other: coldRate, difference: differenceBetween({ hot: hotIn, cold: coldIn }) })
    return { units, ratio, effectiveness, heat, hotOut: cooledOutlet({ inlet: hotIn, heat, rate: hotRate }), coldOut: warmedOutlet({ inlet: coldIn, heat, rate: coldRate }) }
  },
  says: ({ units }) => units > 3
    ? '{units} transfer units give {effectiveness}: a larger core would hardly add to {heat}; more flow would.'
    : '{units} transfer units give {effectiveness} of what is possible: {heat}, the hot stream leaving at {hotOut}, the cold one at {coldOut}.',
  leavesOut: 'how the conductance changes with the flows',
})
