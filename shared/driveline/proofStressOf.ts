import { formula, type About } from '../formula/formula.ts'
import { mm } from '../quantity/si.ts'
import { boltDiameter, proofStress, propertyClass } from './quantities.ts'

const megapascals = { '8.8': 580, '9.8': 650, '10.9': 830, '12.9': 970 } as const

/** Stress that a bolt of a property class must bear without lasting stretch, pascals. Class 8.8 has a higher one above 16 mm. */
export const about = {
  name: 'Proof stress of a property class',
  in: { propertyClass, diameter: boltDiameter },
  out: proofStress,
  table: 'Stress under proof load by property class; class 8.8 in two lines, up to 16 mm and above.',
  nodes: [
    { in: { propertyClass: '8.8', diameter: 0.016 }, out: 580e6 }, { in: { propertyClass: '8.8', diameter: 0.018 }, out: 600e6 },
    { in: { propertyClass: '9.8', diameter: 0.01 }, out: 650e6 }, { in: { propertyClass: '10.9', diameter: 0.02 }, out: 830e6 }, { in: { propertyClass: '12.9', diameter: 0.012 }, out: 970e6 },
  ],
  source: ['iso-898-1', 'table 3, stress under proof load'],
  notes: 'Class 9.8 is listed up to 16 mm.',
} as const satisfies About

export const proofStressOf = formula<typeof about>('proof-stress-of', { diameter: [mm(1.6), mm(39)] },
  ({ propertyClass, diameter }) => (propertyClass === '8.8' && diameter > 0.016 ? 600 : megapascals[propertyClass]) * 1e6)
