import { formula, type About } from '../formula/formula.ts'
import { spacerConductivityOf, spacerMaterial } from './quantities.ts'

const values = { phenolic: 0.3, epoxy: 0.2, polyamide: 0.3, ptfe: 0.25, stainless: 17, steel: 50, castIron: 50, aluminium: 160 } as const

/** Conductivity of what spacers, bolts and housings are made of, at room temperature. */
export const about = {
  name: 'Conductivity of a material',
  in: { material: spacerMaterial },
  out: spacerConductivityOf,
  table: 'Design values, W/(m K). Nothing is interpolated.',
  nodes: [
    { in: { material: 'phenolic' }, out: 0.3 }, { in: { material: 'epoxy' }, out: 0.2 }, { in: { material: 'polyamide' }, out: 0.3 }, { in: { material: 'ptfe' }, out: 0.25 },
    { in: { material: 'stainless' }, out: 17 }, { in: { material: 'steel' }, out: 50 }, { in: { material: 'castIron' }, out: 50 }, { in: { material: 'aluminium' }, out: 160 },
  ],
  source: ['en-12524', 'design values'],
  notes: 'Cast aluminium and laminates vary by a third either way with alloy and filling.',
} as const satisfies About

export const materialConductivity = formula<typeof about>('material-conductivity', {}, ({ material }) => values[material])
