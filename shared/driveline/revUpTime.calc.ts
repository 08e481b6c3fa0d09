import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { rpm } from '../quantity/si.ts'
import { shaftSpeed, torque } from '../engine/quantities.ts'
import { clutchInertia, flywheelInertia, shaftInertia } from './fields.ts'
import { angularAcceleration, inertia, revUpTime } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { inertiaSum } from './inertiaSum.ts'
import { revUpRate } from './revUpRate.ts'
import { revUpTimeAt } from './revUpTimeAt.ts'

export default calculation({
  id: 'rev-up-time',
  title: 'How fast it revs up',
  theme: 'driveline',
  asks: 'How fast does the engine rev up with the clutch out?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    torque: free(torque, 120, 'Torque while it revs'), from: free(shaftSpeed, rpm(2000), 'Speed at the start'), to: free(shaftSpeed, rpm(6000), 'Speed at the end'),
    shaft: shaftInertia, flywheel: flywheelInertia, clutch: clutchInertia,
  },
  out: { rate: angularAcceleration, time: revUpTime, inertia: role(inertia, 'J', 'Inertia on the shaft') },
  curve: ['flywheel', 'time'],
  answer({ torque, from, to, shaft, flywheel, clutch }) {
    if (!(to > from)) throw new NoAnswer('engine', 'The speed at the end must be above the speed at the start.')
    const inertia = inertiaSum({ shaft, flywheel, clutch })
    const rate = revUpRate({ torque, inertia })
    return { rate, inertia, time: revUpTimeAt({ from, to, rate }) }
  },
  says: () => 'With {inertia} on the shaft and {torque} it gains {rate}: {time} from {from} to {to}.',
  leavesOut: 'Friction growing with speed, and the time boost takes to arrive.',
})
