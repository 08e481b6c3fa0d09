import { formula, type About } from '../formula/formula.ts'
import { density } from '../data/ethyleneGlycol.ts'
import { degC } from '../quantity/si.ts'
import { coolantTable, tableAt } from './coolantTable.ts'
import { coolantDensityOf, coolantTemperatureOf, glycolVolume } from './quantities.ts'

/** Mass of a volume of ethylene glycol and water. */
export const about = {
  name: 'Density of glycol and water',
  in: { temperature: coolantTemperatureOf, glycol: glycolVolume },
  out: coolantDensityOf,
  table: 'Straight lines over temperature (every 5 K) and share by volume (every 10 %); beyond the ends the last line goes on, and below freezing it means nothing.',
  nodes: [
    { in: { temperature: degC(20), glycol: 0.3 }, out: 1045.25 },
    { in: { temperature: degC(60), glycol: 0.5 }, out: 1052.04 },
    { in: { temperature: degC(90), glycol: 0.5 }, out: 1030.95 },
    { in: { temperature: degC(-35), glycol: 0.6 }, out: 1104.6 },
    { in: { temperature: degC(100), glycol: 0.1 }, out: 972.32 },
    { in: { temperature: degC(80), glycol: 0 }, out: 971.803 },
  ],
  source: ['ashrae-2001', 'aqueous ethylene glycol, 10 to 60 % by volume; 0 % is water by IAPWS-IF97'],
  notes: 'Source ends at 100 °C. Inhibitors are counted as glycol.',
} as const satisfies About

const table = coolantTable(density, 1)

export const coolantDensity = formula<typeof about>('coolant-density', { temperature: [238.15, 373.15], glycol: [0, 0.6] }, ({ temperature, glycol }) => tableAt(table, temperature, glycol))
