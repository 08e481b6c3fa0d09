import { calculation, free } from '../calculation/calculation.ts'
import { engineLambdaCurve } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { manifoldPressure } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { kPa } from '../quantity/si.ts'
import { dropAtManifold } from './dropAtManifold.ts'
import { dutyOf } from './dutyOf.ts'
import { handoverBlend, handoverHysteresis, handoverStart, longestDuty, primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity, regulatorRefers, secondariesPerRotor, secondaryFlow, secondaryRatedDrop } from './fields.ts'
import { fuelAtHandover } from './fuelAtHandover.ts'
import { lambdaOnCurve } from './lambdaOnCurve.ts'
import { largerDuty } from './largerDuty.ts'
import { longestPulseOf } from './longestPulseOf.ts'
import { at } from './point.ts'
import { dutyCycle, fuelPerCharge, handoverPressure, loadMoves, pulseWidth, stageFault } from './quantities.ts'
import { stagesOf } from './stagesOf.ts'
import { stageState } from './stageState.ts'
import { startOfOrder } from './startOfOrder.ts'
import { switchOffPressure } from './switchOffPressure.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'two-stage-cell',
  title: 'Two stages at any speed and manifold pressure',
  theme: 'fuel',
  asks: 'What does each stage give at this speed and manifold pressure, with load rising or falling, and what stands in its way?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['fuel-vapour', 'knock', 'model-only'],
  in: {
    manifold: free(manifoldPressure, kPa(110), 'Manifold pressure looked at'), moving: free(loadMoves, 'rising'), speed: engine.speed, fullFuel: at.fuelPerCharge, full: engine.manifold, curve: engineLambdaCurve,
    density: at.density, drop: at.drop, lastDrop: at.lastInjectorDrop, reference: regulatorRefers, ratedDensity: ratedFluidDensity, limit: longestDuty,
    primaryFlow, primaryRatedDrop, primaryDeadTime: at.primaryDeadTime, primarySmallest: at.primarySmallestPulse, primaries: primariesPerRotor,
    secondaryFlow, secondaryRatedDrop, secondaryDeadTime: at.secondaryDeadTime, secondarySmallest: at.secondarySmallestPulse, secondaries: secondariesPerRotor,
    start: handoverStart, width: handoverBlend, hysteresis: handoverHysteresis,
  },
  out: {
    fuel: role(fuelPerCharge, 'm_c', 'Fuel of a charge there'), primary: role(fuelPerCharge, 'm_1', 'Fuel of the primaries'), secondary: role(fuelPerCharge, 'm_2', 'Fuel of the secondaries'),
    primaryPulse: role(pulseWidth, 't_1', 'Pulse of a primary'), secondaryPulse: role(pulseWidth, 't_2', 'Pulse of a secondary'), duty: role(dutyCycle, 'D', 'Duty of the busier stage'),
    gate: role(handoverPressure, 'p_s', 'Pressure above which the secondaries work now'), fault: stageFault,
  },
  curve: ['manifold', 'secondaryPulse'],
  answer(x) {
    const { manifold, full, curve, reference, start, width } = x
    const there = (drop: number): number => dropAtManifold({ drop, reference, known: full, manifold })
    const stages = stagesOf({ ...x, drop: there(x.drop), lastDrop: there(x.lastDrop) })
    const fuel = fuelAtHandover({ fuel: x.fullFuel, manifold: full, handover: manifold, lambda: lambdaOnCurve({ curve, manifold: full }), handoverLambda: lambdaOnCurve({ curve, manifold }) })
    const gate = startOfOrder({ moving: x.moving, start, off: switchOffPressure({ start, hysteresis: x.hysteresis }) })
    const { primary, secondary, wanted, primaryPulse, secondaryPulse } = stages.part({ fuel, manifold, start, width, gate })
    const turn = turnTimeOf({ speed: x.speed })
    return {
      fuel, primary, secondary, primaryPulse, secondaryPulse, duty: largerDuty({ primary: dutyOf({ pulse: primaryPulse, turn }), secondary: dutyOf({ pulse: secondaryPulse, turn }) }), gate,
      fault: stageState({ primaryPulse, secondaryPulse, primaryLeast: x.primarySmallest, secondaryLeast: x.secondarySmallest, longest: longestPulseOf({ limit: x.limit, turn }), wanted, given: secondary }),
    }
  },
  says: ({ fault, secondaryPulse }) => `At {manifold} a charge gets {fuel}: ${secondaryPulse > 0 ? '{primary} from the primaries, open {primaryPulse}, and {secondary} from the secondaries, open {secondaryPulse}.' : 'all from the primaries, open {primaryPulse}; the secondaries rest below {gate}.'} ${faultSays[fault as 0 | 1 | 2 | 3 | 4]}`,
  leavesOut: 'Breathing and charge temperature are those of full throttle at this speed; at part throttle a log replaces them. Fuel on the walls and on its way.',
})

/** What each fault means, by its number. */
export const faultSays = [
  'Nothing stands in its way.',
  'The secondaries are held at their least, more than the blend asks.',
  'The secondaries have to wait: the primaries cannot step down so far and still repeat.',
  'A primary is asked for less than it repeats: smaller primaries, or a lower rail pressure, would mend it.',
  'A pulse is longer than the turn allows: the fuel does not get in. Larger injectors, or an earlier hand-over, would mend it.',
] as const
