import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { drainOverFeed } from './drainOverFeed.ts'
import { drainReynolds } from './drainReynolds.ts'
import { dropToSump } from './dropToSump.ts'
import { density15, jetCoefficient, turboFeed } from './fields.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { halfFullDrain } from './halfFullDrain.ts'
import { jetFlow } from './jetFlow.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { at } from './point.ts'
import { drainBore, drainFall, drainLength, drainNumber, drainTimes, foamFactor, oilFlow } from './quantities.ts'
import { restrictorArea } from './restrictorArea.ts'
import { smallerFlow } from './smallerFlow.ts'
import { turbulentDrain } from './turbulentDrain.ts'

export default calculation({
  id: 'turbo-oil', title: 'Oil to and from the turbocharger', theme: 'oil',
  asks: 'What does the restrictor pass, and does the drain carry it away?',
  article: 'flow-and-pressure', cautions: ['hot-oil', 'hot-metal', 'model-only'],
  in: {
    pressure: at.gaugePressure, temperature: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, restrictor: turboFeed, coefficient: jetCoefficient,
    bore: free(drainBore, mm(16)), length: free(drainLength, mm(350)), fall: free(drainFall, mm(120)), foam: free(foamFactor, 2.5),
  },
  out: { feed: role(oilFlow, 'Q_t', 'Feed through the restrictor'), drain: role(oilFlow, 'Q_d', 'What the half-full drain carries'), times: drainTimes, reynolds: drainNumber },
  curve: ['bore', 'times'],
  mayLack: ['times'],
  answer({ pressure, temperature, viscosity40, viscosity100, density15, restrictor, coefficient, bore, length, fall, foam }) {
    if (!(viscosity100 < viscosity40)) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
    const density = oilDensityAt({ density15, temperature })
    const feed = jetFlow({ area: restrictorArea({ restrictor }), coefficient, drop: dropToSump({ pressure }), density })
    const oil = { bore, length, fall, density, viscosity: filmAtTemperature({ viscosity40, viscosity100, density15, share: 1, temperature }) }
    const drain = smallerFlow({ one: halfFullDrain(oil), other: turbulentDrain(oil) })
    return { feed, drain, times: drainOverFeed({ drain, feed, foam }), reynolds: drainReynolds({ flow: drain, bore, viscosity: oil.viscosity, density }) }
  },
  says: ({ times }) => times < 1
    ? 'The restrictor passes {feed}; as foam that is more than the {drain} this drain carries half full: oil backs up and leaves by the seals. A larger bore, more fall, or a smaller restrictor.'
    : 'The restrictor passes {feed}; half full the drain carries {drain}, {times} times what comes to it as foam.',
  leavesOut: 'The drain must end above the oil in the sump, standing, cornering and with windage; pressure in the sump pushes against it. Bearings with rollers want far less oil than plain ones: their maker states it.',
})
