import { type About, formula } from '../formula/formula.ts'
import { bendRadius, dashNumber, hoseKind } from './quantities.ts'

/** Smallest radius to which a hose may be bent, by its dash number. */
export const about = {
  name: 'Least bend radius of a hose',
  in: { dash: dashNumber, hose: hoseKind },
  out: bendRadius,
  table: 'Least bend radius of MIL-H-8794 hose, one wire braid, by dash number; no value between sizes.',
  nodes: [
    { in: { dash: 4, hose: 'rubber' }, out: 3 * 0.0254 }, { in: { dash: 6, hose: 'rubber' }, out: 4 * 0.0254 }, { in: { dash: 8, hose: 'rubber' }, out: 4.63 * 0.0254 },
    { in: { dash: 10, hose: 'rubber' }, out: 5.5 * 0.0254 }, { in: { dash: 12, hose: 'rubber' }, out: 6.5 * 0.0254 }, { in: { dash: 16, hose: 'rubber' }, out: 7.38 * 0.0254 },
  ],
  source: ['faa-ac43', 'table 9-3'],
  notes: 'To the inside of the bend. Hoses lined with PTFE differ by make: enter the radius that their maker states.',
} as const satisfies About

const inches: Readonly<Record<number, number>> = { 3: 3, 4: 3, 5: 3.38, 6: 4, 8: 4.63, 10: 5.5, 12: 6.5, 16: 7.38, 20: 9, 24: 11, 32: 13.25 }
export const hoseBendOf = formula<typeof about>('hose-bend-of', {}, ({ dash, hose }) => (hose === 'rubber' ? (inches[dash] ?? NaN) * 0.0254 : NaN))
