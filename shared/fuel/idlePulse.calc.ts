import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { engineRotors, idleManifoldPressure, idleSpeed, siteAirPressure } from '../engine/fields.ts'
import { fuelPerCharge as fuelPerChargeAt } from '../engine/fuelPerCharge.ts'
import { lPerH } from '../quantity/si.ts'
import { primariesPerRotor, primaryDeadTime, primaryFlow, primaryRatedDrop, primarySmallestPulse, ratedFluidDensity, regulatorRefers, regulatorSetting } from './fields.ts'
import { fuelMassFlowOf } from './fuelMassFlowOf.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { nozzleDropOf } from './nozzleDropOf.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { fuelPerCharge, fuelVolumeFlow, pulseReserve, pulseWidth } from './quantities.ts'
import { pulseReserveOf } from './pulseReserveOf.ts'
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
    ratedFlow: primaryFlow, ratedDrop: primaryRatedDrop, setting: regulatorSetting, reference: regulatorRefers, manifold: idleManifoldPressure, outside: siteAirPressure, ratedDensity: ratedFluidDensity, number: primariesPerRotor, deadTime: primaryDeadTime, smallest: primarySmallestPulse,
  },
  out: { fuel: fuelPerCharge, pulse: pulseWidth, reserve: pulseReserve },
  curve: ['ratedFlow', 'pulse'],
  answer({ idleFlow, speed, rotors, density, ratedFlow, ratedDrop, setting, reference, manifold, outside, ratedDensity, number, deadTime, smallest }) {
    if (number === 0) throw new NoAnswer('primary-pulse-idle', 'There is no primary injector: nothing feeds the rotors at idle.')
    const fuel = fuelPerChargeAt({ fuelFlow: fuelMassFlowOf({ volumeFlow: idleFlow, density }), rotors, speed })
    const drop = nozzleDropOf({ rail: reference === 'manifold' ? referencedPressure({ setting, manifold, outside }) : setting, outside, manifold })
    const flow = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density }), number, density })
    const pulse = pulseFor({ fuel, flow, deadTime })
    return { fuel, pulse, reserve: pulseReserveOf({ pulse, smallest }) }
  },
  says: ({ reserve }) => reserve < 0
    ? 'At {speed} each charge needs {fuel}, a pulse of {pulse}: shorter than the {smallest} that repeats, so idle will hunt.'
    : 'At {speed} each charge needs {fuel}, a pulse of {pulse}, {reserve} longer than the shortest that repeats.',
  leavesOut: 'Loss in the lines at idle, which is next to nothing, and how the shots of one injector differ from those of its twin.',
})
