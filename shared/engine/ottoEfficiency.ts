import { formula, type About } from '../formula/formula.ts'
import { heatRatio } from '../boost/quantities.ts'
import { airStandardEfficiency, compressionRatio } from './quantities.ts'

/** What an ideal engine with all heat added at smallest volume would turn into work: the ceiling, not the engine. */
export const about = {
  name: 'Air-standard efficiency of the Otto cycle',
  in: { compressionRatio, ratioOfSpecificHeats: heatRatio },
  out: airStandardEfficiency,
  equation: '1 - compressionRatio^(1 - ratioOfSpecificHeats)',
  source: ['heywood-1988', 'equation 5.31'],
  notes: 'Source states no range. With 1.4, cold air, it is the convention to which an indicated quality belongs; hot burned gas is nearer 1.25.',
} as const satisfies About

export const ottoEfficiency = formula<typeof about>('otto-efficiency', {}, ({ compressionRatio: ratio, ratioOfSpecificHeats }) => 1 - ratio ** (1 - ratioOfSpecificHeats))
