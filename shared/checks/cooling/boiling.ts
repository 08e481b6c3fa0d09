import { type Check } from '../check.ts'

const source = 'Boiling points of aqueous ethylene glycol by volume at atmospheric pressure, as engineering tables print them in whole degrees Fahrenheit'
const uneven = 'The printed row is uneven (30 and 40 % share one value), and the ideal solution leaves out what little vapour glycol gives: up to 1.1 K apart'
/** Share by volume, °F; half a degree is the precision of the print. */
const rows: readonly (readonly [glycol: number, value: number, differs?: string])[] = [[0.1, 214], [0.2, 216], [0.3, 220, uneven], [0.4, 220, uneven], [0.5, 225, uneven], [0.6, 232]]

export const checks: readonly Check[] = rows.map(([glycol, value, differs]): Check => ({
  id: `coolant-boils-${Math.round(glycol * 100)}`, of: 'coolant-boiling-point', in: { pressure: 101325, glycol }, out: { out: { value, unit: '°F', tolerance: 0.5 } }, source, confidence: 'from memory',
  ...(differs === undefined ? {} : { differs }),
}))
