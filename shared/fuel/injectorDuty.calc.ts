import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { closingTimeLeft } from './closingTimeLeft.ts'
import { dutyOf } from './dutyOf.ts'
import { primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity } from './fields.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { at } from './point.ts'
import { pulseFor } from './pulseFor.ts'
import { closingTime, dutyCycle, pulseWidth } from './quantities.ts'
import { stageMassFlow } from './stageMassFlow.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'injector-duty',
  title: 'Pulse and duty of one stage',
  theme: 'fuel',
  asks: 'If the primaries had to feed everything alone, how much of each shaft turn would they be open?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['fuel-vapour', 'model-only'],
  in: {
    ratedFlow: primaryFlow, ratedDrop: primaryRatedDrop, deadTime: at.primaryDeadTime, number: primariesPerRotor, ratedDensity: ratedFluidDensity,
    speed: engine.speed, drop: at.drop, density: at.density, fuel: at.fuelPerCharge,
  },
  out: { pulse: pulseWidth, duty: dutyCycle, closing: closingTime },
  curve: ['speed', 'duty'],
  answer({ ratedFlow, ratedDrop, deadTime, number, ratedDensity, speed, drop, density, fuel }) {
    if (number === 0) throw new NoAnswer('injector-closing-window', 'There is no primary injector: nothing feeds the rotors at idle.')
    const flow = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density }), number, density })
    const pulse = pulseFor({ fuel, flow, deadTime })
    const turn = turnTimeOf({ speed })
    return { pulse, duty: dutyOf({ pulse, turn }), closing: closingTimeLeft({ turn, primary: pulse, secondary: 0 }) }
  },
  says: ({ duty }) => duty > 1
    ? 'At {speed} each charge would ask {pulse}, {duty} of the turn: alone, they cannot feed it.'
    : 'At {speed} each charge asks {pulse}, {duty} of the turn. One shaft turn is all there is: each rotor takes a charge in every one.',
  leavesOut: 'The second stage, and how dead time rises when voltage falls.',
})
