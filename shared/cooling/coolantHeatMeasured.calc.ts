import { calculation, free } from '../calculation/calculation.ts'
import { degC, lPerMin } from '../quantity/si.ts'
import { burnedPower } from './burnedPower.ts'
import { coolantCapacityRate } from './coolantCapacityRate.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { glycol } from './fields.ts'
import { heatOfStream } from './heatOfStream.ts'
import { at } from './point.ts'
import { coolantFlowOf, coolantTemperatureOf, endDifference, heatFlow, heatShareOf } from './quantities.ts'
import { shareOfReleased } from './shareOfReleased.ts'

/** One steady run turns the guessed share of the coolant into a measured one. */
export default calculation({
  id: 'coolant-heat-measured',
  title: 'Coolant heat from one steady run',
  theme: 'cooling',
  asks: 'How much heat did the coolant really take, and what share of the released heat is that?',
  article: 'where-the-heat-goes',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    flow: free(coolantFlowOf, lPerMin(240), 'Coolant flow through the engine'), warming: free(endDifference, 13, 'Warming of the coolant in the engine'),
    temperature: free(coolantTemperatureOf, degC(90), 'Coolant temperature there'), glycol, fuelPower: at.fuelPower, unburned: at.unburnedHeat,
  },
  out: { heat: heatFlow, share: heatShareOf },
  curve: ['warming', 'share'],
  answer({ flow, warming, temperature, glycol, fuelPower, unburned }) {
    const rate = coolantCapacityRate({ flow, density: coolantDensity({ temperature, glycol }), specificHeat: coolantSpecificHeat({ temperature, glycol }) })
    const heat = heatOfStream({ rate, change: warming })
    return { heat, share: shareOfReleased({ heat, released: burnedPower({ fuelPower, unburned }) }) }
  },
  says: () => '{warming} of warming at {flow} is {heat}, {share} of the heat released at this point. Put that in your build as the coolant’s share, if the run was at this speed and full load.',
  leavesOut: 'a run that was not steady: warming metal takes heat that this counts to nobody',
})
