import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { flowArea, gasPressure, pressureLoss } from '../boost/quantities.ts'
import { engineThrottleBore, engineThrottleClosed, engineThrottleDischarge, engineThrottlePosition, engineThrottleShaft } from './fields.ts'
import { at } from './point.ts'
import { plateAngle, areaShare } from './quantities.ts'
import { plateAngleAt } from './plateAngleAt.ts'
import { pressureBeforeThrottle } from './pressureBeforeThrottle.ts'
import { shareOfArea } from './shareOfArea.ts'
import { lossAcross } from './lossAcross.ts'
import { throttleArea } from './throttleArea.ts'

export default calculation({
  id: 'throttle-plate', title: 'Pressure across the throttle plate', theme: 'engine', article: 'the-path-in', cautions: ['model-only'],
  asks: 'How far does the throttle really open, and what pressure does it hold back?',
  in: {
    position: engineThrottlePosition, bore: engineThrottleBore, shaft: engineThrottleShaft, closed: engineThrottleClosed, dischargeCoefficient: engineThrottleDischarge,
    flow: at.air, manifold: at.manifold, temperature: at.charge,
  },
  out: { loss: pressureLoss, before: role(gasPressure, 'p_v', 'Pressure before the throttle'), area: flowArea, share: areaShare, angle: plateAngle },
  curve: ['position', 'area'],
  answer({ position, bore, shaft, closed, dischargeCoefficient, flow, manifold, temperature }) {
    const angle = plateAngleAt({ position, closed })
    const area = throttleArea({ bore, shaft, angle, closed })
    const before = pressureBeforeThrottle({ flow, area, dischargeCoefficient, temperature, manifold })
    return { loss: lossAcross({ before, after: manifold }), before, area, share: shareOfArea({ area, bore }), angle }
  },
  says: ({ loss, manifold }) => loss > manifold
    ? 'At {position} of its travel the plate frees {share} of the bore. {flow} through it would take {before} before it: far less air passes here than was asked.'
    : 'At {position} of its travel the plate frees {share} of the bore, {area}; {flow} through it costs {loss}. Most of the area comes in the first half of the travel: a large throttle is touchy off idle.',
  leavesOut: 'Leakage past the shut plate, the idle bypass, and a plate that meets air already turning.',
})
