import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { boltUnderLoad } from './boltUnderLoad.ts'
import { clampUnderLoad } from './clampUnderLoad.ts'
import { loadFactorOf } from './loadFactorOf.ts'
import { boltDiameter, boltLength, boltPreload, elasticModulus, jointLoad, jointStiffness, loadFactorOf as factorOf, preloadChange, threadPitch } from './quantities.ts'
import { rodStiffness } from './rodStiffness.ts'
import { separatingLoad } from './separatingLoad.ts'
import { threadStressArea } from './threadStressArea.ts'

export default calculation({
  id: 'joint-separation',
  title: 'When a bolted joint opens',
  theme: 'driveline',
  asks: 'How hard may the joint be pulled before its faces part, and what does the bolt feel until then?',
  article: 'fasteners-and-preload',
  cautions: ['hot-metal', 'model-only'],
  in: { preload: free(boltPreload, 25000), load: free(jointLoad, 8000), diameter: free(boltDiameter, mm(10)), pitch: free(threadPitch, mm(1.25)), length: free(boltLength, mm(60)), modulus: free(elasticModulus, 206e9), stack: free(jointStiffness, 900e6, 'Stiffness of the stack at one bolt') },
  out: { factor: factorOf, clamp: role(preloadChange, 'F_k', 'Clamp left'), bolt: role(boltPreload, 'F_b', 'Force in the bolt'), parts: role(jointLoad, 'F_0', 'Load at which the faces part') },
  curve: ['load', 'clamp'],
  answer({ preload, load, diameter, pitch, length, modulus, stack }) {
    const factor = loadFactorOf({ bolt: rodStiffness({ modulus, area: threadStressArea({ diameter, pitch }), length }), stack })
    return { factor, clamp: clampUnderLoad({ preload, load, factor }), bolt: boltUnderLoad({ preload, load, factor }), parts: separatingLoad({ preload, factor }) }
  },
  says: ({ clamp }) => clamp <= 0
    ? 'The faces part at {parts}, below the {load} that pulls: from there the bolt takes all of it, and fatigue with it.'
    : 'Under {load} the faces still press with {clamp}; they part at {parts}. The bolt feels {bolt}: only {factor} of the load reaches it.',
  leavesOut: 'Bending, settling after tightening, load that acts inside the stack, and scatter of the preload.',
})
