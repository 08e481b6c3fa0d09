import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clampedLength, expansionOfMetal, thermalGrowth, warming } from './quantities.ts'

/**
 * How much more a stack of aluminium and iron grows than the bolt through it, when all warm alike.
 * `(l_a α_a + l_i α_i − (l_a + l_i) α_b) ΔT`, metres.
 */
export const about = {
  name: 'Growth of the stack over its bolt',
  in: {
    aluminium: role(clampedLength, 'l_a', 'Clamped length of aluminium'), iron: role(clampedLength, 'l_i', 'Clamped length of iron'),
    ofAluminium: role(expansionOfMetal, 'α_a', 'Expansion of the aluminium'), ofIron: role(expansionOfMetal, 'α_i', 'Expansion of the iron'), ofBolt: role(expansionOfMetal, 'α_b', 'Expansion of the bolt'),
    warming,
  },
  out: thermalGrowth,
  equation: '(aluminium * ofAluminium + iron * ofIron - (aluminium + iron) * ofBolt) * warming',
  source: ['derived', 'free expansion of each layer, bolt and stack at one temperature'],
  notes: 'A bolt cooler than its stack grows less and takes more load than this says.',
} as const satisfies About

export const growthOverBolt = formula<typeof about>('growth-over-bolt', {}, ({ aluminium, iron, ofAluminium, ofIron, ofBolt, warming }) =>
  (aluminium * ofAluminium + iron * ofIron - (aluminium + iron) * ofBolt) * warming)
