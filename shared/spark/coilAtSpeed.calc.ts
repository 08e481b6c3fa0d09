import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { burn, driver, inductance, layout, resistance, voltage, wantedCurrent } from './fields.ts'
import { chargeWindowOf } from './chargeWindowOf.ts'
import { coilCurrentAfter } from './coilCurrentAfter.ts'
import { coilEnergyAt } from './coilEnergyAt.ts'
import { coilSupply } from './coilSupply.ts'
import { currentReached } from './currentReached.ts'
import { energyKept } from './energyKept.ts'
import { chargeWindow, coilCurrent, coilEnergy, energyShare } from './quantities.ts'
import { sparkPeriodAt } from './sparkPeriodAt.ts'
import { sparksPerTurnOf } from './sparksPerTurnOf.ts'

export default calculation({
  id: 'coil-at-speed', title: 'Coil current over voltage and speed', theme: 'spark', article: 'spark-at-speed', cautions: ['electrical', 'model-only'],
  asks: 'What current and energy does a coil reach at this shaft speed and this voltage?',
  in: { speed: engine.speed, voltage, layout, inductance, resistance, current: wantedCurrent, driver, burn },
  out: { reached: coilCurrent, energy: coilEnergy, share: energyShare, window: chargeWindow },
  curve: ['voltage', 'reached'],
  answer({ speed, voltage, layout, inductance, resistance, current, driver, burn }) {
    const across = coilSupply({ voltage, driver })
    const window = chargeWindowOf({ period: sparkPeriodAt({ speed, sparks: sparksPerTurnOf({ layout }) }), burn })
    if (!(across > 0)) throw new NoAnswer('coil', 'The driver keeps all the voltage there is: no current flows.')
    if (!(window > 0)) throw new NoAnswer('coil', 'The spark before it still burns when the next is due: no time is left to charge.')
    const reached = currentReached({ wanted: current, allowed: coilCurrentAfter({ inductance, resistance, time: window, voltage: across }) })
    const energy = coilEnergyAt({ inductance, current: reached })
    return { reached, energy, share: energyKept({ energy, wanted: coilEnergyAt({ inductance, current }) }), window }
  },
  says: ({ share }) => share < 1
    ? 'At {speed} and {voltage} the coil gets {reached} in the {window} it has: {share} of the energy wanted. Boost asks more voltage of the spark just there.'
    : 'At {speed} and {voltage} the coil reaches the {reached} wanted within {window} and holds {energy}.',
  leavesOut: 'Saturation of the iron, heat in the coil, and the voltage that the gap asks at this boost.',
})
