import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { at } from './point.ts'
import { burn, driver, inductance, layout, resistance, voltage, wantedCurrent } from './fields.ts'
import { chargeWindowOf } from './chargeWindowOf.ts'
import { coilChargeTime } from './coilChargeTime.ts'
import { coilCurrentLimit } from './coilCurrentLimit.ts'
import { coilSupply } from './coilSupply.ts'
import { sparkPeriodAt } from './sparkPeriodAt.ts'
import { sparksPerTurnOf } from './sparksPerTurnOf.ts'

export default calculation({
  id: 'coil-charge',
  title: 'Coil charge time in the time there is',
  theme: 'spark',
  asks: 'Is there time at this shaft speed to charge the coils?',
  article: 'spark-at-speed',
  cautions: ['electrical', 'model-only'],
  in: { speed: engine.speed, layout, inductance, resistance, current: wantedCurrent, voltage, driver, burn },
  out: { time: at.chargeTime, window: at.chargeWindow },
  curve: ['speed', 'window'],
  answer({ speed, layout, inductance, resistance, current, voltage, driver, burn }) {
    const across = coilSupply({ voltage, driver })
    if (!(across > 0 && current < coilCurrentLimit({ voltage: across, resistance }))) {
      throw new NoAnswer('coil', 'The coil never reaches this current: at this voltage its circuit’s resistance stops the current short of it.')
    }
    return {
      time: coilChargeTime({ inductance, resistance, current, voltage: across }),
      window: chargeWindowOf({ period: sparkPeriodAt({ speed, sparks: sparksPerTurnOf({ layout }) }), burn }),
    }
  },
  says: ({ time, window }) => time > window
    ? 'At {speed} a coil needs {time} and has {window}: it fires before it is charged, and weak.'
    : 'At {speed} a coil needs {time} of the {window} it has.',
  leavesOut: 'Saturation of the iron, and heat: a coil that charges most of the time gets hot.',
})
