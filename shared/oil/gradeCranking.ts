import { formula, type About } from '../formula/formula.ts'
import { gradeParts } from '../quantity/grade.ts'
import { winterGrades } from '../data/oilsGrades.ts'
import { crankingTemperature, crankingViscosity, oilGrade } from './quantities.ts'

/** What the winter number of a grade promises: no more than this viscosity when cranking at this temperature. */
export const about = {
  name: 'Cranking limit of a grade',
  in: { grade: oilGrade },
  out: { temperature: crankingTemperature, most: crankingViscosity },
  table: 'The table of the standard; a grade without W promises nothing here.',
  nodes: [
    { in: { grade: '0W-20' }, out: { temperature: 238.15, most: 6.2 } },
    { in: { grade: '5W-30' }, out: { temperature: 243.15, most: 6.6 } },
    { in: { grade: '10W-40' }, out: { temperature: 248.15, most: 7 } },
    { in: { grade: '15W-40' }, out: { temperature: 253.15, most: 7 } },
    { in: { grade: '20W-50' }, out: { temperature: 258.15, most: 9.5 } },
    { in: { grade: '25W' }, out: { temperature: 263.15, most: 13 } },
  ],
  source: ['sae-j300', 'table 1, cold cranking'],
} as const satisfies About

export const gradeCranking = formula<typeof about>('grade-cranking', {}, ({ grade }) => {
  const { cold } = gradeParts(grade)
  const row = winterGrades.find((g) => g.grade === cold)
  return row ? { temperature: row.cranking + 273.15, most: row.crankingMost } : { temperature: Number.NaN, most: Number.NaN }
})
