import { formula, type About } from '../formula/formula.ts'
import { type ValueOf } from '../quantity/quantity.ts'
import { hotExpansion, hotMaterial } from './quantities.ts'

/** Mean coefficient of expansion of a stainless steel from room temperature to 650 °C. */
export const about = {
  name: 'Expansion of a hot-side material',
  in: { material: hotMaterial },
  out: hotExpansion,
  table: 'Mean coefficient of thermal expansion from 0 to 650 °C by type, annealed; no interpolation.',
  nodes: [
    { in: { material: 'stainless-304' }, out: 18.7e-6 }, { in: { material: 'stainless-316' }, out: 18.5e-6 },
    { in: { material: 'stainless-321' }, out: 19.3e-6 }, { in: { material: 'stainless-347' }, out: 19.1e-6 },
    { in: { material: 'stainless-309' }, out: 18e-6 }, { in: { material: 'stainless-310' }, out: 17.5e-6 },
    { in: { material: 'ferritic-409' }, out: 12.4e-6 }, { in: { material: 'ferritic-430' }, out: 11.9e-6 },
  ],
  source: ['asm-stainless', 'table of physical properties of wrought stainless steels, annealed condition'],
  notes: 'Heats differ by about 3 %. Above 650 °C the mean grows a little; below it is smaller, by a tenth at 100 °C.',
} as const satisfies About

/** Millionths per kelvin. */
const table: Readonly<Record<ValueOf<typeof hotMaterial>, number>> = {
  'stainless-304': 18.7, 'stainless-316': 18.5, 'stainless-321': 19.3, 'stainless-347': 19.1, 'stainless-309': 18, 'stainless-310': 17.5, 'ferritic-409': 12.4, 'ferritic-430': 11.9,
}

export const expansionOfHotMaterial = formula<typeof about>('expansion-of-hot-material', {}, ({ material }) => table[material] * 1e-6)
