import { formula, type About } from '../formula/formula.ts'
import { conductivity } from '../data/ethyleneGlycol.ts'
import { degC } from '../quantity/si.ts'
import { coolantTable, tableAt } from './coolantTable.ts'
import { coolantConductivityOf, coolantTemperatureOf, glycolVolume } from './quantities.ts'

/** How well still ethylene glycol and water conducts heat. */
export const about = {
  name: 'Conductivity of glycol and water',
  in: { temperature: coolantTemperatureOf, glycol: glycolVolume },
  out: coolantConductivityOf,
  table: 'Straight lines over temperature (every 5 K) and share by volume (every 10 %); beyond the ends the last line goes on, and below freezing it means nothing.',
  nodes: [
    { in: { temperature: degC(20), glycol: 0.3 }, out: 0.453 },
    { in: { temperature: degC(60), glycol: 0.5 }, out: 0.404 },
    { in: { temperature: degC(90), glycol: 0.5 }, out: 0.414 },
    { in: { temperature: degC(100), glycol: 0.1 }, out: 0.613 },
  ],
  source: ['ashrae-2001', 'aqueous ethylene glycol, 10 to 60 % by volume; 0 % is water by IAPWS-IF97'],
  notes: 'Source ends at 100 °C. Inhibitors are counted as glycol.',
} as const satisfies About

const table = coolantTable(conductivity, 1)

export const coolantConductivity = formula<typeof about>('coolant-conductivity', { temperature: [238.15, 373.15], glycol: [0, 0.6] }, ({ temperature, glycol }) => tableAt(table, temperature, glycol))
