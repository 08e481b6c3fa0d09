import { formula, type About } from '../formula/formula.ts'
import { specificHeat } from '../data/ethyleneGlycol.ts'
import { degC } from '../quantity/si.ts'
import { coolantTable, tableAt } from './coolantTable.ts'
import { coolantHeatCapacity, coolantTemperatureOf, glycolVolume } from './quantities.ts'

/** Heat that warms a kilogram of ethylene glycol and water by one kelvin. */
export const about = {
  name: 'Specific heat of glycol and water',
  in: { temperature: coolantTemperatureOf, glycol: glycolVolume },
  out: coolantHeatCapacity,
  table: 'Straight lines over temperature (every 5 K) and share by volume (every 10 %); beyond the ends the last line goes on, and below freezing it means nothing.',
  nodes: [
    { in: { temperature: degC(20), glycol: 0.3 }, out: 3645 },
    { in: { temperature: degC(60), glycol: 0.5 }, out: 3435 },
    { in: { temperature: degC(90), glycol: 0.5 }, out: 3551 },
    { in: { temperature: degC(-35), glycol: 0.6 }, out: 2844 },
    { in: { temperature: degC(100), glycol: 0.1 }, out: 4112 },
  ],
  source: ['ashrae-2001', 'aqueous ethylene glycol, 10 to 60 % by volume; 0 % is water by IAPWS-IF97'],
  notes: 'Source ends at 100 °C. Inhibitors are counted as glycol.',
} as const satisfies About

const table = coolantTable(specificHeat, 1)

export const coolantSpecificHeat = formula<typeof about>('coolant-specific-heat', { temperature: [238.15, 373.15], glycol: [0, 0.6] }, ({ temperature, glycol }) => tableAt(table, temperature, glycol))
