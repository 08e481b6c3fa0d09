import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { carSpeedOf } from '../cooling/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { kmh, litre, lPerH } from '../quantity/si.ts'
import { distanceOnFuel } from './distanceOnFuel.ts'
import { tank, tankUnusable } from './fields.ts'
import { fuelLasts } from './fuelLasts.ts'
import { fuelOverDistance } from './fuelOverDistance.ts'
import { at } from './point.ts'
import { distanceFuel, fuelVolumeFlow, sessionTime, tankDistance, tankVolume } from './quantities.ts'
import { usableFuelOf } from './usableFuelOf.ts'

export default calculation({
  id: 'tank-range',
  title: 'Range of a tank',
  theme: 'fuel',
  asks: 'How far does a tank reach when cruising, and how long at full load?',
  article: 'how-much-fuel',
  cautions: ['fuel-vapour', 'model-only'],
  in: {
    tank, unusable: tankUnusable, reserve: free(tankVolume, litre(5), 'Fuel kept in hand'), cruise: free(fuelVolumeFlow, lPerH(14), 'Fuel used when cruising'), speed: free(carSpeedOf, kmh(110), 'Speed when cruising'), full: at.volumeFlow,
  },
  out: { usable: role(tankVolume, 'V_u', 'Fuel to be used'), range: tankDistance, consumption: distanceFuel, flatOut: role(sessionTime, 't_f', 'Time at full load') },
  curve: ['cruise', 'range'],
  mayLack: ['range', 'consumption', 'flatOut'],
  answer({ tank: whole, unusable, reserve, cruise, speed, full }) {
    const usable = usableFuelOf({ tank: usableFuelOf({ tank: whole, unusable }), unusable: reserve })
    if (!(usable > 0)) throw new NoAnswer('tank-range', 'What cannot be reached and what is kept in hand leave nothing of the tank.')
    return { usable, range: distanceOnFuel({ fuel: usable, flow: cruise, speed }), consumption: fuelOverDistance({ flow: cruise, speed }), flatOut: fuelLasts({ fuel: usable, flow: full }) }
  },
  says: () => '{usable} can be used: at {speed} and {cruise} they last {range}, {consumption}. At full load they are gone after {flatOut}.',
  leavesOut: 'Wind, hills, traffic and warming up, which all cost fuel.',
})
