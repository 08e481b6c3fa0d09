import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { bypassCapacityOf } from './bypassCapacityOf.ts'
import { regulatorFullDrop, regulatorFullFlow, regulatorRefers, regulatorSetting, returnBore, returnFittings, returnLength, roughness, runningTemperature, viscosity } from './fields.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { at } from './point.ts'
import { referencedPressure } from './referencedPressure.ts'
import { returnedFlowOf } from './returnedFlowOf.ts'

export default calculation({
  id: 'regulator-bypass',
  title: 'Regulator bypass',
  theme: 'fuel',
  asks: 'Can the regulator and its return send back what the engine does not burn, without the rail rising?',
  article: 'pump-regulator-and-voltage',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    pumped: at.pumpFlow, used: at.volumeFlow, density: at.density, setting: regulatorSetting, reference: regulatorRefers, manifold: engine.manifold, outside: siteAirPressure,
    fullFlow: regulatorFullFlow, fullDrop: regulatorFullDrop, bore: returnBore, length: returnLength, fittings: returnFittings, roughness, viscosity20: viscosity, temperature: runningTemperature,
  },
  out: { returned: at.bypassFlow, capacity: at.bypassCapacity },
  curve: ['bore', 'capacity'],
  answer(x) {
    const held = x.reference === 'manifold' ? referencedPressure({ setting: x.setting, manifold: x.manifold, outside: x.outside }) : x.setting
    return {
      returned: returnedFlowOf({ pumped: x.pumped, used: x.used }),
      capacity: bypassCapacityOf({
        held, fullFlow: x.fullFlow, fullDrop: x.fullDrop, bore: x.bore, length: x.length, fittings: x.fittings, roughness: x.roughness, density: x.density,
        viscosity: fuelViscosityAt({ viscosity20: x.viscosity20, temperature: x.temperature }),
      }),
    }
  },
  says: ({ returned, capacity }) => returned > capacity
    ? '{returned} has to go back, but the open regulator and its return pass {capacity} at the pressure to be held: the rail will rise.'
    : '{returned} has to go back; the open regulator and its return would pass {capacity}.',
  leavesOut: 'The slope of the regulator before it is wide open, and a return that ends under fuel or against a check valve.',
})
