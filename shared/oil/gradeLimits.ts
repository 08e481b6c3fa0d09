import { formula, type About } from '../formula/formula.ts'
import { gradeParts } from '../quantity/grade.ts'
import { role } from '../quantity/quantity.ts'
import { hotGrades, winterGrades } from '../data/oilsGrades.ts'
import { highShearViscosity, oilGrade, viscosityAt100 } from './quantities.ts'

/** What the hot number of a grade promises: a band at 100 °C and a least viscosity at high shear. A winter grade alone has no upper limit there. */
export const about = {
  name: 'Hot limits of a grade',
  in: { grade: oilGrade },
  out: { least: role(viscosityAt100, 'ν_min', 'Least viscosity at 100 °C'), most: role(viscosityAt100, 'ν_max', 'Viscosity at 100 °C stays below'), highShear: role(highShearViscosity, 'η_HS', 'Least high-shear viscosity') },
  table: 'The table of the standard; grade 40 has a lower high-shear limit with 0W, 5W and 10W. A winter grade without a hot one has only a least viscosity.',
  nodes: [
    { in: { grade: '10W-40' }, out: { least: 12.5e-6, most: 16.3e-6, highShear: 3.5e-3 } },
    { in: { grade: '15W-40' }, out: { least: 12.5e-6, most: 16.3e-6, highShear: 3.7e-3 } },
    { in: { grade: '20W-50' }, out: { least: 16.3e-6, most: 21.9e-6, highShear: 3.7e-3 } },
    { in: { grade: '30' }, out: { least: 9.3e-6, most: 12.5e-6, highShear: 2.9e-3 } },
    { in: { grade: '0W-20' }, out: { least: 6.9e-6, most: 9.3e-6, highShear: 2.6e-3 } },
    { in: { grade: '5W-16' }, out: { least: 6.1e-6, most: 8.2e-6, highShear: 2.3e-3 } },
    { in: { grade: '60' }, out: { least: 21.9e-6, most: 26.1e-6, highShear: 3.7e-3 } },
  ],
  source: ['sae-j300', 'table 1, hot limits'],
} as const satisfies About

export const gradeLimits = formula<typeof about>('grade-limits', {}, ({ grade }) => {
  const { cold, hot } = gradeParts(grade)
  const winter = winterGrades.find((g) => g.grade === cold)
  const row = hotGrades.find((g) => g.grade === hot)
  if (!row) return { least: (winter?.least ?? Number.NaN) * 1e-6, most: Number.NaN, highShear: Number.NaN }
  const light = hot === 40 && cold !== null && cold <= 10
  return { least: row.least * 1e-6, most: row.most * 1e-6, highShear: (light ? 3.5 : row.highShear) * 1e-3 }
})
