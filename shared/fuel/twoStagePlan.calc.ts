import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { closingTimeLeft } from './closingTimeLeft.ts'
import { dutyOf } from './dutyOf.ts'
import { handoverBlend, handoverHysteresis, handoverLambda, handoverStart, primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity, secondariesPerRotor, secondaryFlow, secondaryRatedDrop } from './fields.ts'
import { fuelAtHandover } from './fuelAtHandover.ts'
import { largerDuty } from './largerDuty.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { handoverPressure } from './quantities.ts'
import { stagePart } from './stagePart.ts'
import { stagesOf } from './stagesOf.ts'
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
    primaryFlow, primaryRatedDrop, primaryDeadTime: at.primaryDeadTime, primarySmallest: at.primarySmallestPulse, primaries: primariesPerRotor,
    secondaryFlow, secondaryRatedDrop, secondaryDeadTime: at.secondaryDeadTime, secondarySmallest: at.secondarySmallestPulse, secondaries: secondariesPerRotor,
    start: handoverStart, width: handoverBlend, handoverLambda, hysteresis: handoverHysteresis,
  },
  out: {
    turn: at.turnTime, primaryPulse: at.primaryPulse, primaryDuty: at.primaryDuty, secondaryPulse: at.secondaryPulse, secondaryDuty: at.secondaryDuty,
    worstDuty: at.worstDuty, closing: at.closingTime, secondaryPulseAtHandover: at.secondaryPulseAtHandover, primaryDutyAtHandover: at.primaryDutyAtHandover, off: handoverPressure,
  },
  curve: ['fuel', 'secondaryPulse'],
  mayLack: ['secondaryPulseAtHandover'],
  answer(x) {
    const { manifold, start, width, fuel } = x
    const stages = stagesOf(x)
    const { primaryRate, secondaryRate, fullShare } = stages
    const { primaryPulse, secondaryPulse } = stages.part({ fuel, manifold, start, width, gate: start })
    const turn = turnTimeOf({ speed: x.speed })
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
  leavesOut: 'Fuel on the walls and the way from the secondaries to the port: what is injected without a step still arrives with one. Also left out: injection timing. Fuel and manifold pressure are two inputs here; the cell of any speed and manifold pressure ties them together.',
})
