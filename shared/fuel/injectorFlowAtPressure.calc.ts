import { calculation } from '../calculation/calculation.ts'
import { primaryFlow, primaryRatedDrop, ratedFluidDensity } from './fields.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { at } from './point.ts'
import { injectorFlow, injectorMassFlow } from './quantities.ts'
import { stageMassFlow } from './stageMassFlow.ts'

export default calculation({
  id: 'injector-flow-at-pressure',
  title: 'Injector flow at your pressure, of your fuel',
  theme: 'fuel',
  asks: 'What does an injector pass at my pressure and with my fuel, when its rating was taken at another pressure with another fluid?',
  article: 'what-an-injector-rating-means',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: { ratedFlow: primaryFlow, ratedDrop: primaryRatedDrop, ratedDensity: ratedFluidDensity, drop: at.drop, density: at.density },
  out: { flow: injectorFlow, massFlow: injectorMassFlow },
  curve: ['drop', 'flow'],
  answer({ ratedFlow, ratedDrop, ratedDensity, drop, density }) {
    const flow = injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density })
    return { flow, massFlow: stageMassFlow({ flow, number: 1, density }) }
  },
  says: () => 'Rated {ratedFlow} at {ratedDrop}, it passes {flow} of your fuel at {drop} across the nozzle: {massFlow} while it is held open.',
  leavesOut: 'The needle not lifting fully at high pressure, and the temperature of the coil.',
})
