import { margin } from '../build/margin.ts'
import { at } from './point.ts'

/** No number moves this one: the model does not know when the charge burns, so it cannot know whether it knocks. */
export default margin({
  id: 'knock', title: 'Knock', theme: 'engine', article: 'the-order-of-decisions', over: 'sweep', always: 'not known',
  demand: at.manifold, capacity: at.manifold, must: 'stay below', as: 'share', tight: 0, rests: [], remedies: [],
  says: 'Not known, whatever the other links say. Nothing here can tell whether the charge burns or explodes: that depends on fuel, ignition timing, mixture, plug heat and carbon in this very engine.',
  settle: 'A knock sensor or head set listened to on a dynamometer, timing brought up from well retarded, plugs read after each pull, by someone who has done it before.',
})
