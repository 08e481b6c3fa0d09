import { type Check } from '../check.ts'

const table = 'US EPA, AP-42, fifth edition, table 7.1-2: true vapour pressure of gasoline'
const differs = 'The printed table and the equation printed with its figure part here by up to 4 %, more than the table’s last place'

/** True vapour pressure, psia, of gasolines of three Reid pressures from 40 to 100 °F in steps of 10 °F, as the table prints it. */
const rows: readonly (readonly [number, readonly number[]])[] = [
  [13, [4.7, 5.7, 6.9, 8.3, 9.9, 11.7, 13.8]],
  [10, [3.4, 4.2, 5.2, 6.2, 7.4, 8.8, 10.5]],
  [7, [2.3, 2.9, 3.5, 4.3, 5.2, 6.2, 7.4]],
]
/** Cells whose printed precision the equation does not meet. */
const apart = new Set(['13-80', '13-90', '13-100', '10-40', '10-50', '10-70', '10-80', '10-90', '10-100', '7-50'])

export const checks: readonly Check[] = rows.flatMap(([reid, values]) => values.map((value, i) => {
  const fahrenheit = 40 + 10 * i
  return {
    id: `vapour-${reid}-${fahrenheit}`, of: 'true-vapour-pressure',
    in: { reid: `${reid} psi abs`, temperature: `${fahrenheit} °F` },
    out: { out: { value, unit: 'psi abs', tolerance: 0.05 } },
    source: `${table}, RVP ${reid}, ${fahrenheit} °F`, confidence: 'from memory' as const,
    ...(apart.has(`${reid}-${fahrenheit}`) && { differs }),
  }
}))
