import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { idleLambda } from '../engine/fields.ts'
import { lambda } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { bar } from '../quantity/si.ts'
import { primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity, secondariesPerRotor, secondaryFlow, secondaryRatedDrop } from './fields.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { lambdaOfFuelChange } from './lambdaOfFuelChange.ts'
import { lessOf } from './lessOf.ts'
import { massFlowForPulse } from './massFlowForPulse.ts'
import { oneStageFlow } from './oneStageFlow.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { pulseReserveOf } from './pulseReserveOf.ts'
import { fuelPerCharge, fuelSpread, injectorFlow, nozzleDrop, pulseReserve, pulseWidth } from './quantities.ts'
import { ratedFlowFor } from './ratedFlowFor.ts'
import { shotSpreadAt } from './shotSpreadAt.ts'
import { stageMassFlow } from './stageMassFlow.ts'

export default calculation({
  id: 'idle-quality',
  title: 'Idle quality: pulse, repeatability and mixture',
  theme: 'fuel',
  asks: 'How far does the mixture of single charges spread at idle, with two stages and with one rail of the same total flow?',
  article: 'one-rail-or-two',
  cautions: ['fuel-vapour', 'exhaust-gas', 'model-only'],
  in: {
    fuel: free(fuelPerCharge, 13.3e-6, 'Fuel per charge at idle'), lambda: idleLambda, spread: free(fuelSpread, 0.03, 'Spread of shots at the smallest pulse'), drop: free(nozzleDrop, bar(3.5), 'Pressure across the nozzles at idle'),
    density: at.density, ratedDensity: ratedFluidDensity, primaryFlow, primaryRatedDrop, primaries: primariesPerRotor, deadTime: at.primaryDeadTime, smallest: at.primarySmallestPulse,
    secondaryFlow, secondaryRatedDrop, secondaries: secondariesPerRotor, secondaryDead: at.secondaryDeadTime, secondarySmallest: at.secondarySmallestPulse,
  },
  out: {
    pulse: pulseWidth, shots: role(fuelSpread, 's_1', 'Spread of single shots'), rich: role(lambda, 'λ_r', 'Richest charge'), lean: role(lambda, 'λ_l', 'Leanest charge'),
    onePulse: role(pulseWidth, 't_12', 'Pulse of one rail of the same total'), oneReserve: pulseReserve, oneShots: role(fuelSpread, 's_12', 'Spread of single shots, one rail'),
    largest: role(injectorFlow, 'Q_max', 'Largest single rail that repeats at idle, per rotor'),
  },
  curve: ['fuel', 'shots'],
  answer(x) {
    if (x.primaries === 0) throw new NoAnswer('primary-pulse-idle', 'There is no primary injector: nothing feeds the rotors at idle.')
    const { fuel, density, ratedDensity, drop, spread } = x
    if (!(x.smallest > x.deadTime) || !(x.secondarySmallest > x.secondaryDead)) throw new NoAnswer('primary-pulse-idle', 'A smallest repeatable pulse is not longer than its dead time: one of the two figures is wrong.')
    const primary = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.primaryFlow, drop, ratedDrop: x.primaryRatedDrop }), ratedDensity, density }), number: x.primaries, density })
    const secondary = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.secondaryFlow, drop, ratedDrop: x.secondaryRatedDrop }), ratedDensity, density }), number: x.secondaries, density })
    const pulse = pulseFor({ fuel, flow: primary, deadTime: x.deadTime })
    const shots = shotSpreadAt({ spread, smallest: x.smallest, deadTime: x.deadTime, pulse })
    // One rail of the same total repeats like the larger injector of the two.
    const onePulse = pulseFor({ fuel, flow: oneStageFlow({ primaryFlow: primary, secondaryFlow: secondary }), deadTime: x.secondaryDead })
    return {
      pulse, shots, rich: lambdaOfFuelChange({ lambda: x.lambda, change: shots }), lean: lambdaOfFuelChange({ lambda: x.lambda, change: lessOf({ spread: shots }) }),
      onePulse, oneReserve: pulseReserveOf({ pulse: onePulse, smallest: x.secondarySmallest }), oneShots: shotSpreadAt({ spread, smallest: x.secondarySmallest, deadTime: x.secondaryDead, pulse: onePulse }),
      largest: ratedFlowFor({ massFlow: massFlowForPulse({ fuel, pulse: x.secondarySmallest, deadTime: x.secondaryDead }), density, ratedDensity, drop, ratedDrop: x.secondaryRatedDrop }),
    }
  },
  says: ({ oneReserve }) => `On the primaries a charge gets {pulse}; its fuel spreads by {shots}, so single charges lie between lambda {rich} and {lean}. One rail of the same total would be open {onePulse}, ${oneReserve < 0
    ? 'less than the {secondarySmallest} that repeat: it would not idle. The largest single rail that would is {largest} for each rotor.'
    : '{oneReserve} more than the shortest that repeats, with a spread of {oneShots}: one rail would do at idle.'}`,
  leavesOut: 'What the wall film evens out from charge to charge, misfires, and exhaust gas that stays in the chamber, which trouble a rotary’s idle too.',
})
