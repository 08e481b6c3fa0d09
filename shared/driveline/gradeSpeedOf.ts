import { formula, type About } from '../formula/formula.ts'
import { balanceGrade, gradeSpeed } from './quantities.ts'

const millimetresPerSecond = { 'G0.4': 0.4, 'G1': 1, 'G2.5': 2.5, 'G6.3': 6.3, 'G16': 16, 'G40': 40, 'G100': 100 } as const

/** The number of a balance quality grade: offset of the mass times angular speed, mm/s. */
export const about = {
  name: 'Balance quality grade',
  in: { grade: balanceGrade },
  out: gradeSpeed,
  table: 'The number behind the G is the product of permissible offset and angular speed in mm/s.',
  nodes: [{ in: { grade: 'G0.4' }, out: 0.4e-3 }, { in: { grade: 'G2.5' }, out: 2.5e-3 }, { in: { grade: 'G6.3' }, out: 6.3e-3 }, { in: { grade: 'G100' }, out: 0.1 }],
  source: ['iso-21940-11', 'table 1, balance quality grades'],
} as const satisfies About

export const gradeSpeedOf = formula<typeof about>('grade-speed-of', {}, ({ grade }) => millimetresPerSecond[grade] / 1000)
