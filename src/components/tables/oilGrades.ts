import { hotGrades, winterGrades } from '@trochoid/compute/data/oilsGrades.ts'
import { figure, type ReferenceTable } from './table.ts'

export const oilGrades: ReferenceTable = {
  id: 'oil-grades', title: 'Oil grades', also: 'SAE J300 viscosity at 100 weight 20W-50 10W-40 high shear HTHS cold cranking',
  says: 'Between which viscosities an oil of each grade lies, hot and cold.',
  parts: [
    {
      id: 'hot', title: 'Second number: hot',
      head: ['Grade', 'At 100 °C, at least, mm²/s', 'At 100 °C, below, mm²/s', 'High shear at 150 °C, at least, mPa s'],
      rows: hotGrades.map(({ grade, least, most, highShear }) => [String(grade), figure(least, 1), figure(most, 1), figure(highShear, 1)]),
    },
    {
      id: 'cold', title: 'First number, with a W: cold',
      head: ['Grade', 'At 100 °C, at least, mm²/s', 'Cranking tested at, °C', 'Cranking, at most, Pa s'],
      rows: winterGrades.map(({ grade, least, cranking, crankingMost }) => [`${grade}W`, figure(least, 1), figure(cranking), figure(crankingMost, 1)]),
    },
  ],
  notes: [
    'A grade is a band, not a value: two oils of one grade may differ by a third at 100 °C. The data sheet gives the value.',
    'Of grade 40, the sorts 0W-40, 5W-40 and 10W-40 need only 3.5 mPa s at high shear; 15W-40, 20W-40, 25W-40 and single grade 40 need 3.7.',
    'The grade says nothing about what an oil leaves when it burns, nor about what a seal needs.',
  ],
  sources: ['sae-j300'], cautions: ['hot-oil', 'waste-oil'], calculators: ['oil-grade', 'oil-film-viscosity', 'grade-and-clearance'],
}
