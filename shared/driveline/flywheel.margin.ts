import { margin } from '../build/margin.ts'
import { engineSpeedLimit } from '../engine/fields.ts'
import { flywheelSpeed } from './fields.ts'

export default margin({
  id: 'flywheel-speed',
  title: 'Flywheel against its stated speed',
  theme: 'driveline',
  article: 'flywheel-mass-and-inertia',
  over: 'build',
  demand: engineSpeedLimit,
  capacity: flywheelSpeed,
  must: 'stay below',
  as: 'share',
  tight: 0.1,
  words: { holds: 'inside', tight: 'inside', short: 'outside' },
  rests: [flywheelSpeed],
  remedies: [
    { field: engineSpeedLimit, move: 'down', says: 'Set the speed limit lower' },
    { field: flywheelSpeed, move: 'up', says: 'Fit a flywheel whose maker states a higher speed' },
  ],
  says: 'The engine is used to {demand}; the flywheel’s maker states {capacity}: {margin}. A missed gear can take it higher than any limiter.',
  settle: 'The maker’s stated speed, on the part or in writing, with the standard it was spin-tested to.',
})
