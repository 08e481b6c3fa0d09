import { margin } from '../build/margin.ts'
import { feedBore, leastDrop, linkBore, regulatorSetting } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'last-injector-pressure',
  title: 'Rail pressure at the last injector',
  theme: 'fuel',
  article: 'hoses-and-rails-series-or-parallel',
  over: 'sweep',
  demand: at.lastInjectorDrop,
  capacity: leastDrop,
  must: 'stay above',
  as: 'share',
  tight: 0.05,
  rests: [regulatorSetting, feedBore, leastDrop],
  remedies: [
    { field: regulatorSetting, move: 'up', says: 'A higher setting makes up for what the lines or an unreferenced regulator take.' },
    { field: feedBore, move: 'up', says: 'A wider feed loses less on the way.' },
    { field: linkBore, move: 'up', says: 'A wider line between the rails loses less on the way.' },
  ],
  says: 'At {speed} {demand} is left across the last nozzle; the injector data hold from {capacity} on: {margin}.',
  settle: 'One gauge at the far end of the last rail and one on the manifold, read together on a full pull.',
})
