import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { boltDiameter, boltLength, clampedLength, elasticModulus, expansionOfMetal, jointStiffness, preloadChange, thermalGrowth, threadPitch, warming } from './quantities.ts'
import { growthOverBolt } from './growthOverBolt.ts'
import { preloadFromGrowth } from './preloadFromGrowth.ts'
import { rodStiffness } from './rodStiffness.ts'
import { threadStressArea } from './threadStressArea.ts'

export default calculation({
  id: 'thermal-preload',
  title: 'Preload of a warm stack',
  theme: 'driveline',
  asks: 'How much preload does a long bolt through aluminium and iron gain when warm?',
  article: 'fasteners-and-preload',
  cautions: ['hot-metal', 'model-only'],
  in: {
    aluminium: free(clampedLength, mm(160), 'Clamped length of aluminium'), iron: free(clampedLength, mm(120), 'Clamped length of iron'),
    ofAluminium: free(expansionOfMetal, 21e-6, 'Expansion of the aluminium'), ofIron: free(expansionOfMetal, 11e-6, 'Expansion of the iron'), ofBolt: free(expansionOfMetal, 11.5e-6, 'Expansion of the bolt'),
    warming: free(warming, 75), diameter: free(boltDiameter, mm(10)), pitch: free(threadPitch, mm(1.25)), length: free(boltLength, mm(290)), modulus: free(elasticModulus, 206e9),
    stack: free(jointStiffness, 400e6, 'Stiffness of the stack at one bolt'),
  },
  out: { change: preloadChange, growth: thermalGrowth },
  curve: ['warming', 'change'],
  answer({ diameter, pitch, length, modulus, stack, ...layers }) {
    const growth = growthOverBolt(layers)
    return { growth, change: preloadFromGrowth({ growth, bolt: rodStiffness({ modulus, area: threadStressArea({ diameter, pitch }), length }), stack }) }
  },
  says: () => 'Warmed by {warming}, the stack would outgrow its bolt by {growth}, which adds {change} to the preload it was tightened to.',
  leavesOut: 'Aluminium hotter than its bolts while warming up, which adds more for a while, and seals that give way.',
})
