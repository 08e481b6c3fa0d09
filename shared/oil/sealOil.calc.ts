import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { idleManifoldPressure, siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { at as fuel } from '../fuel/point.ts'
import { doseByKind } from './doseByKind.ts'
import { doseOverReference } from './doseOverReference.ts'
import { density15, meteredFull, meteredIdle, referenceDose, sealsBy } from './fields.ts'
import { meteredDelivery } from './meteredDelivery.ts'
import { meteredDose } from './meteredDose.ts'
import { at } from './point.ts'
import { premixDose } from './premixDose.ts'
import { sealDose } from './quantities.ts'

export default calculation({
  id: 'seal-oil', title: 'Oil for the seals', theme: 'oil',
  asks: 'How much oil do the seals get in each turn, against a dose of your choice?',
  article: 'metered-premixed-or-both', cautions: ['fuel-additives-skin', 'emission-law', 'model-only'],
  in: {
    by: sealsBy, speed: engine.speed, manifold: engine.manifold, atRest: meteredIdle, full: meteredFull, idle: idleManifoldPressure, open: siteAirPressure,
    density15, premixOil: fuel.premixOilFlow, reference: referenceDose,
  },
  out: { dose: at.sealDose, times: at.sealDoseRatio, metered: role(sealDose, 'd_m', 'Dose by the metering pump'), premixed: role(sealDose, 'd_p', 'Dose by premix') },
  curve: ['speed', 'dose'],
  mayLack: ['times'],
  answer({ by, speed, manifold, atRest, full, idle, open, density15, premixOil, reference }) {
    const metered = meteredDose({ delivery: meteredDelivery({ atRest, full, manifold, idle, open }), density: density15 })
    const premixed = premixDose({ oil: premixOil, speed })
    const dose = doseByKind({ by, metered, premixed })
    return { dose, times: doseOverReference({ dose, reference }), metered, premixed }
  },
  says: ({ by }) => `At {speed} the seals get {dose}, {times} times the reference you chose. ${by === 'metered' ? 'The metering pump follows speed and lever, not fuel.' : 'While the fuel is cut, premix brings nothing.'}`,
  leavesOut: 'How the oil spreads over the seals, what burns on the way, and what the seals need: nobody has published that.',
})
