import { formula, type About } from '../formula/formula.ts'
import { viscosity } from '../data/ethyleneGlycol.ts'
import { degC } from '../quantity/si.ts'
import { coolantTable, tableAt } from './coolantTable.ts'
import { coolantViscosityOf, coolantTemperatureOf, glycolVolume } from './quantities.ts'

/** Resistance of ethylene glycol and water to shear. */
export const about = {
  name: 'Viscosity of glycol and water',
  in: { temperature: coolantTemperatureOf, glycol: glycolVolume },
  out: coolantViscosityOf,
  table: 'Straight lines over temperature (every 5 K) and share by volume (every 10 %), of the logarithm; beyond the ends the last line goes on, and below freezing it means nothing.',
  nodes: [
    { in: { temperature: degC(20), glycol: 0.3 }, out: 0.0022 },
    { in: { temperature: degC(60), glycol: 0.5 }, out: 0.00143 },
    { in: { temperature: degC(90), glycol: 0.5 }, out: 0.00082 },
    { in: { temperature: degC(-35), glycol: 0.6 }, out: 0.09344 },
    { in: { temperature: degC(100), glycol: 0.1 }, out: 0.00035 },
  ],
  source: ['ashrae-2001', 'aqueous ethylene glycol, 10 to 60 % by volume; 0 % is water by IAPWS-IF97'],
  notes: 'Source ends at 100 °C. Inhibitors are counted as glycol.',
} as const satisfies About

const table = coolantTable(viscosity, 1e-3, true)

export const coolantViscosity = formula<typeof about>('coolant-viscosity', { temperature: [238.15, 373.15], glycol: [0, 0.6] }, ({ temperature, glycol }) => tableAt(table, temperature, glycol))
