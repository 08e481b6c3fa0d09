import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { closingTimeLeft } from './closingTimeLeft.ts'
import { dutyOf } from './dutyOf.ts'
import {
  handoverBlend, handoverHysteresis, handoverLambda, handoverStart, primariesPerRotor, primaryDeadTime, primaryFlow, primaryRatedDrop, primarySmallestPulse, ratedFluidDensity,
  secondariesPerRotor, secondaryDeadTime, secondaryFlow, secondaryRatedDrop, secondarySmallestPulse,
} from './fields.ts'
import { fuelAtHandover } from './fuelAtHandover.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { largerDuty } from './largerDuty.ts'
import { leastFuelOf } from './leastFuelOf.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { handoverPressure } from './quantities.ts'
import { stageFuel } from './stageFuel.ts'
import { stageMassFlow } from './stageMassFlow.ts'
import { stagePart } from './stagePart.ts'
import { stageShareOf } from './stageShareOf.ts'
import { switchOffPressure } from './switchOffPressure.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'two-stage-plan',
  title: 'Two-stage plan',
  theme: 'fuel',
  asks: 'How long is each stage open at this speed and manifold pressure, and can the secondaries repeat what they are asked where they come in?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['fuel-vapour', 'knock', 'model-only'],
  in: {
    fuel: at.fuelPerCharge, speed: engine.speed, manifold: engine.manifold, lambda: engine.lambda, density: at.density, drop: at.drop, lastDrop: at.lastInjectorDrop, ratedDensity: ratedFluidDensity,
    primaryFlow, primaryRatedDrop, primaryDeadTime, primarySmallest: primarySmallestPulse, primaries: primariesPerRotor,
    secondaryFlow, secondaryRatedDrop, secondaryDeadTime, secondarySmallest: secondarySmallestPulse, secondaries: secondariesPerRotor,
    start: handoverStart, width: handoverBlend, handoverLambda, hysteresis: handoverHysteresis,
  },
  out: {
    turn: at.turnTime, primaryPulse: at.primaryPulse, primaryDuty: at.primaryDuty, secondaryPulse: at.secondaryPulse, secondaryDuty: at.secondaryDuty,
    worstDuty: at.worstDuty, closing: at.closingTime, secondaryPulseAtHandover: at.secondaryPulseAtHandover, primaryDutyAtHandover: at.primaryDutyAtHandover, off: handoverPressure,
  },
  curve: ['manifold', 'secondaryPulse'],
  mayLack: ['secondaryPulseAtHandover'],
  answer(x) {
    if (x.primaries === 0) throw new NoAnswer('injector-closing-window', 'There is no primary injector: nothing feeds the rotors below hand-over.')
    if (!(x.drop > 0) || !(x.lastDrop > 0)) throw new NoAnswer('injector-closing-window', 'The manifold stands above the rail: no pressure is left across the nozzles.')
    const { density, ratedDensity, manifold, start, width, fuel } = x
    const primaryRate = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.primaryFlow, drop: x.drop, ratedDrop: x.primaryRatedDrop }), ratedDensity, density }), number: x.primaries, density })
    const secondaryRate = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.secondaryFlow, drop: x.lastDrop, ratedDrop: x.secondaryRatedDrop }), ratedDensity, density }), number: x.secondaries, density })
    const fullShare = stageShareOf({ primaryFlow: primaryRate, secondaryFlow: secondaryRate })
    const parts = stageFuel({
      fuel, manifold, start, width, fullShare,
      primaryLeast: leastFuelOf({ smallest: x.primarySmallest, deadTime: x.primaryDeadTime, flow: primaryRate }),
      secondaryLeast: leastFuelOf({ smallest: x.secondarySmallest, deadTime: x.secondaryDeadTime, flow: secondaryRate }),
    })
    const turn = turnTimeOf({ speed: x.speed })
    const primaryPulse = pulseFor({ fuel: parts.primary, flow: primaryRate, deadTime: x.primaryDeadTime })
    const secondaryPulse = parts.secondary > 0 ? pulseFor({ fuel: parts.secondary, flow: secondaryRate, deadTime: x.secondaryDeadTime }) : 0
    const primaryDuty = dutyOf({ pulse: primaryPulse, turn })
    const secondaryDuty = dutyOf({ pulse: secondaryPulse, turn })
    const there = fuelAtHandover({ fuel, manifold, handover: start, lambda: x.lambda, handoverLambda: x.handoverLambda })
    return {
      turn, primaryPulse, primaryDuty, secondaryPulse, secondaryDuty,
      worstDuty: largerDuty({ primary: primaryDuty, secondary: secondaryDuty }),
      closing: closingTimeLeft({ turn, primary: primaryPulse, secondary: secondaryPulse }),
      secondaryPulseAtHandover: pulseFor({ fuel: stagePart({ fuel: there, share: fullShare }), flow: secondaryRate, deadTime: x.secondaryDeadTime }),
      primaryDutyAtHandover: dutyOf({ pulse: pulseFor({ fuel: there, flow: primaryRate, deadTime: x.primaryDeadTime }), turn }),
      off: switchOffPressure({ start, hysteresis: x.hysteresis }),
    }
  },
  says: ({ secondaryPulse, secondaryPulseAtHandover, secondarySmallest, worstDuty }) => {
    const stages = secondaryPulse > 0 ? 'Primaries are open {primaryPulse} and secondaries {secondaryPulse} of a turn of {turn}.' : 'The primaries alone are open {primaryPulse} of a turn of {turn}; the secondaries rest.'
    const room = worstDuty > 1 ? ' That is more than a whole turn: the fuel does not get in.' : ' {closing} is left for closing.'
    if (Number.isNaN(secondaryPulseAtHandover)) return stages + room + ' There are no secondaries to hand over to.'
    return stages + room + ' Just below hand-over, at {start}, the primaries alone would be open {primaryDutyAtHandover} of it.' + (secondaryPulseAtHandover < secondarySmallest
      ? ' At hand-over the secondaries’ full share would be {secondaryPulseAtHandover}, less than they repeat: they are held at {secondarySmallest} and the primaries step down by the same fuel, so mixture there rests on the primaries alone.'
      : ' At hand-over the secondaries’ full share is {secondaryPulseAtHandover}, above the {secondarySmallest} that they repeat.')
  },
  leavesOut: 'Fuel on the walls and the way from the secondaries to the port: what is injected without a step still arrives with one. Also left out: dead time over voltage, and injection timing.',
})
