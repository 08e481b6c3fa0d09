import { winterGrades } from '../data/oilsGrades.ts'
import { type About, formula } from '../formula/formula.ts'
import { gradeParts } from '../quantity/grade.ts'
import { role } from '../quantity/quantity.ts'
import { crankingTemperature, oilGrade, pumpingViscosity } from './quantities.ts'

/** What the winter number of a grade promises for pumping: no more than 60 Pa s without yield stress at this temperature. */
export const about = {
  name: 'Pumping limit of a grade',
  in: { grade: oilGrade },
  out: { temperature: role(crankingTemperature, 'T_p', 'Temperature of the pumping test'), most: role(pumpingViscosity, 'η_p', 'Most viscosity in the pumping test') },
  table: 'The table of the standard; a grade without W promises nothing here.',
  nodes: [
    { in: { grade: '0W-20' }, out: { temperature: 233.15, most: 60 } }, { in: { grade: '5W-30' }, out: { temperature: 238.15, most: 60 } }, { in: { grade: '10W-40' }, out: { temperature: 243.15, most: 60 } },
    { in: { grade: '15W-40' }, out: { temperature: 248.15, most: 60 } }, { in: { grade: '20W-50' }, out: { temperature: 253.15, most: 60 } }, { in: { grade: '25W' }, out: { temperature: 258.15, most: 60 } },
  ],
  source: ['sae-j300', 'table 1, pumping by ASTM D4684'],
} as const satisfies About

export const gradePumping = formula<typeof about>('grade-pumping', {}, ({ grade }) => {
  const { cold } = gradeParts(grade)
  const row = winterGrades.find((g) => g.grade === cold)
  return row ? { temperature: row.pumping + 273.15, most: 60 } : { temperature: Number.NaN, most: Number.NaN }
})
