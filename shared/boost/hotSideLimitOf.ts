import { formula, type About } from '../formula/formula.ts'
import { type ValueOf } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { hotMaterial, turbineInletTemperature } from './quantities.ts'

/** Highest temperature in air at which a stainless steel that is heated and cooled over and over keeps its scale. */
export const about = {
  name: 'Service temperature of a hot-side material',
  in: { material: hotMaterial },
  out: turbineInletTemperature,
  table: 'Maximum service temperature in air, intermittent service, by type; no interpolation.',
  nodes: [
    { in: { material: 'stainless-304' }, out: 1143.15 }, { in: { material: 'stainless-316' }, out: 1143.15 },
    { in: { material: 'stainless-321' }, out: 1143.15 }, { in: { material: 'stainless-347' }, out: 1143.15 },
    { in: { material: 'stainless-309' }, out: 1253.15 }, { in: { material: 'stainless-310' }, out: 1308.15 },
    { in: { material: 'ferritic-409' }, out: 1088.15 }, { in: { material: 'ferritic-430' }, out: 1143.15 },
  ],
  source: ['asm-stainless', 'table of generally accepted maximum service temperatures in air, intermittent service'],
  notes: 'The table is about scaling in air, not about strength: a turbocharger that hangs on hot pipes asks for a bracket. The metal runs cooler than the gas, so comparing gas with it errs on the careful side.',
} as const satisfies About

/** °C. */
const table: Readonly<Record<ValueOf<typeof hotMaterial>, number>> = {
  'stainless-304': 870, 'stainless-316': 870, 'stainless-321': 870, 'stainless-347': 870, 'stainless-309': 980, 'stainless-310': 1035, 'ferritic-409': 815, 'ferritic-430': 870,
}

export const hotSideLimitOf = formula<typeof about>('hot-side-limit-of', {}, ({ material }) => degC(table[material]))
