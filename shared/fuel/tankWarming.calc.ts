import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { heatSum } from '../cooling/heatSum.ts'
import { heatFlow } from '../cooling/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { degC, litre } from '../quantity/si.ts'
import { pumps, voltage } from '../spark/fields.ts'
import { pumpWiringDrop, sessionMinutes, sessionShare } from './fields.ts'
import { heatKept } from './heatKept.ts'
import { meanFuelUse } from './meanFuelUse.ts'
import { at } from './point.ts'
import { pumpHeat } from './pumpHeat.ts'
import { fuelSpecificHeat, fuelTemperature, tankConductance, tankVolume } from './quantities.ts'
import { returnedFlowOf } from './returnedFlowOf.ts'
import { riseOverSurface } from './riseOverSurface.ts'
import { tankTemperature } from './tankTemperature.ts'
import { voltageAfterWiring } from './voltageAfterWiring.ts'
import { warmedFuel } from './warmedFuel.ts'

export default calculation({
  id: 'tank-warming',
  title: 'Return flow warms the tank',
  theme: 'fuel',
  asks: 'How warm does the fuel in the tank become while a pump sends it round?',
  article: 'pump-regulator-and-voltage',
  cautions: ['fuel-vapour', 'model-only'],
  in: {
    supply: voltage, wiring: pumpWiringDrop, current: pumps, rail: free(heatFlow, 250, 'Heat into the rails'), pumped: at.pumpFlow, share: sessionShare, used: at.volumeFlow, volume: free(tankVolume, litre(30), 'Fuel in the tank, mean over the time'),
    start: free(fuelTemperature, degC(25), 'Fuel temperature at the start'), around: free(fuelTemperature, degC(35), 'Air under the tank'), surface: free(tankConductance, 8), density: at.density, specificHeat: free(fuelSpecificHeat, 2100), time: sessionMinutes,
  },
  out: { heat: role(heatFlow, 'Q_t', 'Heat into the tank'), temperature: role(fuelTemperature, 'T_t', 'Fuel temperature then'), settled: role(fuelTemperature, 'T_e', 'Where it would settle') },
  curve: ['time', 'temperature'],
  answer({ supply, wiring, current, rail, pumped, share, used, volume, start, around, surface, density, specificHeat, time }) {
    const burned = meanFuelUse({ used, share })
    if (pumped < burned) throw new NoAnswer('fuel-pump', 'The pump gives less than the engine burns: nothing returns to the tank.')
    if (!(volume > 0)) throw new NoAnswer('tank-warming', 'There is no fuel in the tank to be warmed.')
    const heat = heatKept({ heat: heatSum({ one: pumpHeat({ voltage: voltageAfterWiring({ supply, drop: wiring }), current }), other: rail }), returned: returnedFlowOf({ pumped, used: burned }), pumped })
    const fuel = { around, heat, surface, volume, density, specificHeat }
    return { heat, temperature: tankTemperature({ ...fuel, start, time }), settled: warmedFuel({ temperature: around, rise: riseOverSurface({ heat, surface }) }) }
  },
  says: () => '{heat} come back with the return: after {time} the tank is at {temperature}, on its way to {settled}. Warm fuel boils sooner at the pick-up, where pressure is lowest.',
  leavesOut: 'Heat of the exhaust under the tank, and fuel that leaves as vapour.',
})
