import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { dropToSump } from './dropToSump.ts'
import { pumpPerTurn, pumpRatio } from './fields.ts'
import { at } from './point.ts'
import { pumpDelivery } from './pumpDelivery.ts'
import { pumpPowerOf } from './pumpPowerOf.ts'
import { blendShareReturned, oilFlow, oilPumpPower, pumpTotalShare } from './quantities.ts'
import { wastedShare } from './wastedShare.ts'

export default calculation({
  id: 'oil-pump-power', title: 'Power of the oil pump', theme: 'oil',
  asks: 'What does the oil pump take from the shaft, and how much of it does the relief valve turn into heat?',
  article: 'oil-heat', cautions: ['hot-oil', 'model-only'],
  in: { speed: engine.speed, pressure: at.gaugePressure, taken: at.oilFlow, perTurn: pumpPerTurn, ratio: pumpRatio, efficiency: free(pumpTotalShare, 0.65) },
  out: { power: oilPumpPower, given: role(oilFlow, 'Q_i', 'Pumped at this speed'), returned: blendShareReturned },
  curve: ['speed', 'power'],
  answer({ speed, pressure, taken, perTurn, ratio, efficiency }) {
    const given = pumpDelivery({ perTurn, ratio, speed, efficiency: 1 })
    return { power: pumpPowerOf({ drop: dropToSump({ pressure }), flow: given, efficiency }), given, returned: wastedShare({ given, taken }) }
  },
  says: () => 'At {speed} and {pressure} the pump takes {power} from the shaft to move {given}; {returned} of it goes back through the relief valve and slip and only warms the oil.',
  leavesOut: 'Cold oil, whose friction in the pump is many times that.',
})
