import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { idleManifoldPressure, siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { primaryRatedDrop, ratedFluidDensity, regulatorRefers, regulatorSetting } from './fields.ts'
import { longestPulseOf } from './longestPulseOf.ts'
import { massFlowForPulse } from './massFlowForPulse.ts'
import { nozzleDropOf } from './nozzleDropOf.ts'
import { at } from './point.ts'
import { dutyLimit, fuelPerCharge, injectorFlow } from './quantities.ts'
import { ratedFlowFor } from './ratedFlowFor.ts'
import { referencedPressure } from './referencedPressure.ts'
import { role } from '../quantity/quantity.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'injector-sizing',
  title: 'Injector sizing',
  theme: 'fuel',
  asks: 'How large may a primary be and still idle, and how much rated flow does each rotor need at full load?',
  article: 'one-rail-or-two',
  cautions: ['fuel-vapour', 'knock', 'model-only'],
  in: {
    idleFuel: free(fuelPerCharge, 13.3e-6, 'Fuel per charge at idle'), smallest: at.primarySmallestPulse, deadTime: at.primaryDeadTime, ratedDrop: primaryRatedDrop, ratedDensity: ratedFluidDensity,
    setting: regulatorSetting, reference: regulatorRefers, idleManifold: idleManifoldPressure, outside: siteAirPressure, drop: at.drop, density: at.density, fuel: at.fuelPerCharge, speed: engine.speed, duty: free(dutyLimit, 0.85, 'Share of a turn used at full load'),
  },
  out: { largest: role(injectorFlow, 'Q_max', 'Largest primary that still idles, per rotor'), needed: role(injectorFlow, 'Q_min', 'Rated flow needed, all injectors of one rotor') },
  curve: ['speed', 'needed'],
  answer({ idleFuel, smallest, deadTime, ratedDrop, ratedDensity, setting, reference, idleManifold, outside, drop, density, fuel, speed, duty }) {
    if (!(smallest > deadTime)) throw new NoAnswer('primary-pulse-idle', 'The smallest repeatable pulse is not longer than the dead time: one of the two figures is wrong.')
    const pulse = longestPulseOf({ limit: duty, turn: turnTimeOf({ speed }) })
    if (!(pulse > deadTime)) throw new NoAnswer('injector-closing-window', 'At this speed the dead time alone fills the window.')
    const idleDrop = nozzleDropOf({ rail: reference === 'manifold' ? referencedPressure({ setting, manifold: idleManifold, outside }) : setting, outside, manifold: idleManifold })
    return {
      largest: ratedFlowFor({ massFlow: massFlowForPulse({ fuel: idleFuel, pulse: smallest, deadTime }), density, ratedDensity, drop: idleDrop, ratedDrop }),
      needed: ratedFlowFor({ massFlow: massFlowForPulse({ fuel, pulse, deadTime }), density, ratedDensity, drop, ratedDrop }),
    }
  },
  says: ({ largest, needed }) => needed > largest
    ? 'A rotor needs {needed} of rated flow at full load, but a primary above {largest} no longer repeats at idle: this engine asks for two stages.'
    : 'A primary of up to {largest} still repeats at idle, and {needed} feeds full load: by these figures one stage could do both, if so large an injector still repeats from {smallest} on.',
  leavesOut: 'That larger injectors usually repeat only from a longer pulse on, and have another dead time.',
})
