import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { at as fuel } from '../fuel/point.ts'
import { at } from './point.ts'
import {
  alternator, cabin, coils, controller, driver, fans, hotAir, hotShare, idleAir, inductance, injectorCurrent, injectors, layout, lights, pulley, pumps, ratedAir, resistance,
  voltage, wantedCurrent,
} from './fields.ts'
import { alternatorCurrentAt } from './alternatorCurrentAt.ts'
import { alternatorOutput } from './alternatorOutput.ts'
import { alternatorSpeedAt } from './alternatorSpeedAt.ts'
import { coilMeanCurrent } from './coilMeanCurrent.ts'
import { coilSupply } from './coilSupply.ts'
import { hotOutputShare } from './hotOutputShare.ts'
import { injectorsMeanCurrent } from './injectorsMeanCurrent.ts'
import { loadSum } from './loadSum.ts'
import { sparksPerTurnOf } from './sparksPerTurnOf.ts'

export default calculation({
  id: 'charging-budget',
  title: 'Charging budget',
  theme: 'spark',
  asks: 'Does the alternator carry all loads at this shaft speed?',
  article: 'the-order-of-decisions',
  cautions: ['electrical', 'model-only'],
  in: {
    speed: engine.speed, pulse: fuel.primaryPulse, chargeTime: at.chargeTime, curve: alternator, pulley, air: idleAir, ratedAir, hotAir, hotShare,
    pumps, fans, controller, lights, cabin, each: injectorCurrent, count: injectors, coils, layout, inductance, resistance, current: wantedCurrent, voltage, driver,
  },
  out: { load: at.load, supply: at.supply },
  curve: ['speed', 'supply'],
  answer({ speed, pulse, chargeTime, curve, pulley, air, ratedAir, hotAir, hotShare, pumps, fans, controller, lights, cabin, each, count, coils, layout, inductance, resistance, current, voltage, driver }) {
    if (!(hotAir > ratedAir)) throw new NoAnswer('alternator', 'The hot share must be stated in air warmer than that of the rating test.')
    const share = hotOutputShare({ temperature: air, rated: ratedAir, hot: hotAir, hotShare })
    const coilsTake = coilMeanCurrent({ inductance, resistance, current, voltage: coilSupply({ voltage, driver }), time: chargeTime, sparks: sparksPerTurnOf({ layout }), speed, coils })
    return {
      supply: alternatorOutput({ rated: alternatorCurrentAt({ curve, speed: alternatorSpeedAt({ speed, ratio: pulley }) }), share }),
      load: loadSum({ pumps, fans, controller, lights, cabin, coils: coilsTake, injectors: injectorsMeanCurrent({ count, each, pulse, speed }) }),
    }
  },
  says: ({ load, supply }) => load > supply
    ? 'At {speed} all loads ask {load} and the hot alternator gives {supply}: the battery pays the difference until it is flat.'
    : 'At {speed} all loads ask {load} of the {supply} that the hot alternator gives.',
  leavesOut: 'Charging the battery after a start, short loads such as a starter, and secondaries at power.',
})
