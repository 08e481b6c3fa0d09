import { calculation, free } from '../calculation/calculation.ts'
import { ms } from '../quantity/si.ts'
import { driver, inductance, resistance, voltage } from './fields.ts'
import { chargeTime, coilCurrent, coilEnergy } from './quantities.ts'
import { coilCurrentAfter } from './coilCurrentAfter.ts'
import { coilEnergyAt } from './coilEnergyAt.ts'
import { coilSupply } from './coilSupply.ts'

export default calculation({
  id: 'coil-energy',
  title: 'Energy of a coil after a charge time',
  theme: 'spark',
  asks: 'What energy does a coil hold after this charge time?',
  article: 'spark-at-speed',
  cautions: ['electrical', 'model-only'],
  in: { time: free(chargeTime, ms(3)), inductance, resistance, voltage, driver },
  out: { current: coilCurrent, energy: coilEnergy },
  curve: ['time', 'energy'],
  answer({ time, inductance, resistance, voltage, driver }) {
    const current = coilCurrentAfter({ inductance, resistance, time, voltage: coilSupply({ voltage, driver }) })
    return { current, energy: coilEnergyAt({ inductance, current }) }
  },
  says: () => 'After {time} at {voltage} it carries {current} and holds {energy}. Cranking pulls the voltage down, and with it the energy of the first sparks.',
  leavesOut: 'Saturation of the iron: beyond it the current runs away and the energy does not.',
})
