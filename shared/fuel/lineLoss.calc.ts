import { calculation } from '../calculation/calculation.ts'
import {
  feedBore, feedFittings, feedLength, layout, linkBore, linkFittings, linkLength, primariesPerRotor, primaryFlow, primaryRatedDrop, regulatorStands, roughness, runningTemperature, secondariesPerRotor,
  secondaryFlow, secondaryRatedDrop, viscosity,
} from './fields.ts'
import { flowShareOf } from './flowShareOf.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { lineLossOf } from './lineLossOf.ts'
import { linkFlowParallel } from './linkFlowParallel.ts'
import { linkFlowSeries } from './linkFlowSeries.ts'
import { at } from './point.ts'
import { lineSpeed, pipeReynolds } from './quantities.ts'

export default calculation({
  id: 'line-loss',
  title: 'Pressure lost in hoses and rails',
  theme: 'fuel',
  asks: 'How much pressure do the feed and the line between the rails take?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    used: at.volumeFlow, pumped: at.pumpFlow, density: at.density, place: regulatorStands, layout, viscosity20: viscosity, temperature: runningTemperature, roughness,
    feedBore, feedLength, feedFittings, linkBore, linkLength, linkFittings,
    primaryFlow, primaryDrop: primaryRatedDrop, primaries: primariesPerRotor, secondaryFlow, secondaryDrop: secondaryRatedDrop, secondaries: secondariesPerRotor,
  },
  out: { feedLoss: at.feedLoss, linkLoss: at.linkLoss, speed: lineSpeed, reynolds: pipeReynolds },
  curve: ['feedBore', 'feedLoss'],
  answer(x) {
    const { density, roughness: wall, used } = x
    const fluid = { roughness: wall, density, viscosity: fuelViscosityAt({ viscosity20: x.viscosity20, temperature: x.temperature }) }
    const through = x.place === 'after' ? x.pumped : used
    const feed = lineLossOf({ flow: through, bore: x.feedBore, length: x.feedLength, fittings: x.feedFittings, ...fluid })
    const share = flowShareOf({ primaryFlow: x.primaryFlow, primaryDrop: x.primaryDrop, primaries: x.primaries, secondaryFlow: x.secondaryFlow, secondaryDrop: x.secondaryDrop, secondaries: x.secondaries })
    const between = x.layout === 'series' ? linkFlowSeries({ feed: through, used, share }) : linkFlowParallel({ feed: through, share })
    const link = lineLossOf({ flow: between, bore: x.linkBore, length: x.linkLength, fittings: x.linkFittings, ...fluid })
    return { feedLoss: feed.loss, linkLoss: link.loss, speed: feed.speed, reynolds: feed.reynolds }
  },
  says: ({ place }) => place === 'after'
    ? 'All that the pump gives runs through the feed: {speed}, and {feedLoss} lost. The line between the rails takes {linkLoss} more. With the regulator after the rails this costs pump flow, not rail pressure.'
    : 'What the engine burns runs through the feed: {speed}, and {feedLoss} lost. The line between the rails takes {linkLoss} more. With the regulator before the rails all of it is missing at the last nozzle.',
  leavesOut: 'Bends, crimped hose ends, a filter that fills up, and the pulses of the injectors.',
})
