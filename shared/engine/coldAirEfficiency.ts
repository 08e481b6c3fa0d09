import { formula, type About } from '../formula/formula.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { ottoEfficiency } from './ottoEfficiency.ts'
import { airStandardEfficiency, compressionRatio } from './quantities.ts'

/** The air-standard efficiency with cold air: the ceiling to which the indicated quality of a build belongs. */
export const about = {
  name: 'Cold-air efficiency of the Otto cycle',
  in: { compressionRatio },
  out: airStandardEfficiency,
  equation: '1 - compressionRatio^(1 - airHeatRatio)',
  constants: { airHeatRatio },
  source: ['heywood-1988', 'equation 5.31 with cold air'],
  notes: 'Source states no range.',
} as const satisfies About

export const coldAirEfficiency = formula<typeof about>('cold-air-efficiency', {}, ({ compressionRatio: ratio }) => ottoEfficiency({ compressionRatio: ratio, ratioOfSpecificHeats: airHeatRatio.value }))
