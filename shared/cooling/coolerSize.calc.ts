import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { degC, kW } from '../quantity/si.ts'
import { conductanceNeeded } from './conductanceNeeded.ts'
import { differenceBetween } from './differenceBetween.ts'
import { meanDifference } from './meanDifference.ts'
import { coolerConductance, heatFlow, meanDifferenceOf, surfaceTemperatureOf } from './quantities.ts'

/** Conductance that a counter-flow cooler needs for four wanted temperatures. */
export default calculation({
  id: 'cooler-size',
  title: 'Conductance a cooler needs',
  theme: 'cooling',
  asks: 'How large must a counter-flow cooler be for the temperatures I want?',
  article: 'the-oil-cooler',
  cautions: ['hot-oil', 'model-only'],
  in: {
    heat: free(heatFlow, kW(20)), hotIn: free(surfaceTemperatureOf, degC(115), 'Hot stream at its inlet'), hotOut: free(surfaceTemperatureOf, degC(95), 'Hot stream at its outlet'),
    coldIn: free(surfaceTemperatureOf, degC(80), 'Cold stream at its inlet'), coldOut: free(surfaceTemperatureOf, degC(86), 'Cold stream at its outlet'),
  },
  out: { difference: meanDifferenceOf, conductance: coolerConductance },
  curve: ['hotOut', 'conductance'],
  answer({ heat, hotIn, hotOut, coldIn, coldOut }) {
    if (hotIn <= coldOut || hotOut <= coldIn) throw new NoAnswer('cooler', 'Heat does not flow from cold to hot: at each end the hot stream must be the warmer one.')
    const difference = meanDifference({ first: differenceBetween({ hot: hotIn, cold: coldOut }), second: differenceBetween({ hot: hotOut, cold: coldIn }) })
    return { difference, conductance: conductanceNeeded({ heat, difference }) }
  },
  says: () => 'The mean difference is {difference}, so {heat} needs {conductance} in counter flow. Cross flow needs more: check it by effectiveness.',
  leavesOut: 'arrangements other than counter flow, fouling',
})
