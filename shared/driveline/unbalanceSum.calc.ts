import { calculation, free } from '../calculation/calculation.ts'
import { deg } from '../quantity/si.ts'
import { at as engine } from '../engine/point.ts'
import { unbalance, unbalanceAngle, unbalanceForce } from './quantities.ts'
import { unbalanceForceAt } from './unbalanceForceAt.ts'
import { unbalanceSumOf } from './unbalanceSumOf.ts'

export default calculation({
  id: 'unbalance-sum',
  title: 'Unbalances added on one shaft',
  theme: 'driveline',
  asks: 'What unbalance do these parts leave together, and where?',
  article: 'balance-and-matched-marks',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    speed: engine.speed,
    u1: free(unbalance, 60e-6, 'Flywheel'), a1: free(unbalanceAngle, 0, 'Flywheel, angle'),
    u2: free(unbalance, 40e-6, 'Clutch cover'), a2: free(unbalanceAngle, deg(180), 'Clutch cover, angle'),
    u3: free(unbalance, 20e-6, 'Front pulley'), a3: free(unbalanceAngle, deg(90), 'Front pulley, angle'),
    u4: free(unbalance, 0, 'Shaft'), a4: free(unbalanceAngle, 0, 'Shaft, angle'),
  },
  out: { amount: unbalance, angle: unbalanceAngle, force: unbalanceForce },
  curve: ['a2', 'amount'],
  answer({ speed, ...parts }) {
    const { amount, angle } = unbalanceSumOf(parts)
    return { amount, angle, force: unbalanceForceAt({ unbalance: amount, speed }) }
  },
  says: () => 'Together they leave {amount} at {angle}, a force of {force} at {speed}. Put one back turned and the sum changes: that is why marks are matched.',
  leavesOut: 'Where each part sits along the shaft: parts apart leave a couple as well, which needs two planes.',
})
