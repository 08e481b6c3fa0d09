import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { fuelPerCharge as fuelPerChargeAt } from '../engine/fuelPerCharge.ts'
import { engineRotors, idleManifoldPressure, idleSpeed, siteAirPressure } from '../engine/fields.ts'
import { role } from '../quantity/quantity.ts'
import { lPerH } from '../quantity/si.ts'
import { primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity, regulatorRefers, regulatorSetting } from './fields.ts'
import { flowOfEach } from './flowOfEach.ts'
import { fuelMassFlowOf } from './fuelMassFlowOf.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { massFlowForPulse } from './massFlowForPulse.ts'
import { nozzleDropOf } from './nozzleDropOf.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { pulseReserveOf } from './pulseReserveOf.ts'
import { fuelPerCharge, fuelVolumeFlow, injectorFlow, pulseReserve, pulseWidth } from './quantities.ts'
import { ratedFlowFor } from './ratedFlowFor.ts'
import { referencedPressure } from './referencedPressure.ts'
import { stageMassFlow } from './stageMassFlow.ts'

export default calculation({
  id: 'idle-pulse',
  title: 'Primary pulse at idle',
  theme: 'fuel',
  asks: 'Is a primary open long enough at idle for its fuel to repeat?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['fuel-vapour', 'exhaust-gas', 'model-only'],
  in: {
    idleFlow: free(fuelVolumeFlow, lPerH(1.98), 'Fuel the engine uses at idle'), speed: idleSpeed, rotors: engineRotors, density: at.density,
    ratedFlow: primaryFlow, ratedDrop: primaryRatedDrop, setting: regulatorSetting, reference: regulatorRefers, manifold: idleManifoldPressure, outside: siteAirPressure, ratedDensity: ratedFluidDensity, number: primariesPerRotor, deadTime: at.primaryDeadTime, smallest: at.primarySmallestPulse,
  },
  out: { fuel: fuelPerCharge, pulse: pulseWidth, reserve: pulseReserve, largest: role(injectorFlow, 'Q_max', 'Largest primary that still repeats') },
  curve: ['ratedFlow', 'pulse'],
  answer({ idleFlow, speed, rotors, density, ratedFlow, ratedDrop, setting, reference, manifold, outside, ratedDensity, number, deadTime, smallest }) {
    if (number === 0) throw new NoAnswer('primary-pulse-idle', 'There is no primary injector: nothing feeds the rotors at idle.')
    const fuel = fuelPerChargeAt({ fuelFlow: fuelMassFlowOf({ volumeFlow: idleFlow, density }), rotors, speed })
    const drop = nozzleDropOf({ rail: reference === 'manifold' ? referencedPressure({ setting, manifold, outside }) : setting, outside, manifold })
    const flow = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density }), number, density })
    const pulse = pulseFor({ fuel, flow, deadTime })
    if (!(smallest > deadTime)) throw new NoAnswer('primary-pulse-idle', 'The smallest repeatable pulse is not longer than the dead time: one of the two figures is wrong.')
    const together = ratedFlowFor({ massFlow: massFlowForPulse({ fuel, pulse: smallest, deadTime }), density, ratedDensity, drop, ratedDrop })
    return { fuel, pulse, reserve: pulseReserveOf({ pulse, smallest }), largest: flowOfEach({ together, number }) }
  },
  says: ({ reserve }) => reserve < 0
    ? 'At {speed} each charge needs {fuel}, a pulse of {pulse}: shorter than the {smallest} that repeats, so idle will hunt. The largest primary that would not is {largest}.'
    : 'At {speed} each charge needs {fuel}, a pulse of {pulse}, {reserve} longer than the shortest that repeats. Up to {largest} for each primary it would go on repeating.',
  leavesOut: 'Loss in the lines at idle, which is next to nothing, and how the shots of one injector differ from those of its twin.',
})
