import { type Check, type Expected } from '../check.ts'

const ashrae = '2001 ASHRAE Handbook of Fundamentals, aqueous ethylene glycol by volume, as digitised in the CoolProp repository'
const water = 'IAPWS-IF97 with the IAPWS releases for viscosity and conductivity at 101.325 kPa, computed with python3-iapws 1.5.2'

type Property = 'density' | 'specific-heat' | 'conductivity' | 'viscosity'
const units: Readonly<Record<Property, string>> = { 'density': 'kg/m³', 'specific-heat': 'J/(kg K)', 'conductivity': 'W/(m K)', 'viscosity': 'mPa s' }
const half: Readonly<Record<Property, number>> = { 'density': 0.005, 'specific-heat': 0.5, 'conductivity': 5e-4, 'viscosity': 0.005 }
const one = (of: Property, temperature: number, glycol: number, value: number, source: string, confidence: Check['confidence'], more: Partial<Check> & { tolerance?: number } = {}): Check => {
  const { tolerance = half[of], ...rest } = more
  const out: Expected = { value, unit: units[of], tolerance }
  return { id: `coolant-${of}-${Math.round(glycol * 1000)}-${temperature}`, of: `coolant-${of}`, in: { temperature: `${temperature} °C`, glycol }, out: { out }, source, confidence, ...rest }
}

/** At temperatures °C: density, specific heat, conductivity, viscosity. */
const table: readonly (readonly [glycol: number, temperature: number, values: readonly [number, number, number, number]])[] = [
  [0.3, 20, [1045.25, 3645, 0.453, 2.2]], [0.3, 60, [1026.36, 3759, 0.488, 0.9]], [0.3, 80, [1014, 3816, 0.498, 0.65]], [0.3, 100, [999.69, 3872, 0.504, 0.49]],
  [0.5, 20, [1073.35, 3281, 0.38, 3.94]], [0.5, 60, [1052.04, 3435, 0.404, 1.43]], [0.5, 90, [1030.95, 3551, 0.414, 0.82]], [0.5, 100, [1022.95, 3590, 0.416, 0.7]],
]
const names: readonly Property[] = ['density', 'specific-heat', 'conductivity', 'viscosity']
const waterTable: readonly (readonly [temperature: number, values: readonly [number, number, number, number]])[] = [
  [20, [998.206, 4184.79, 0.59801, 1.0016]], [60, [983.211, 4182.76, 0.65102, 0.46604]], [90, [965.319, 4205.02, 0.6728, 0.31418]],
]
const waterHalf = [6e-4, 0.01, 1e-5, 1e-5] as const
const freezing = [[0.306, -16.2], [0.405, -25.3], [0.506, -37.9], [0.578, -48.3]] as const
const melinder = 'Melinder, Properties of Secondary Working Fluids (IIR, 2010), 30 % by mass, by the polynomial of the CoolProp repository; 27.7 % by volume in the ASHRAE table'
const apart = 'Two published tables of the same mixture: these two differ by about this much themselves'

export const checks: readonly Check[] = [
  ...table.flatMap(([glycol, temperature, values]) => names.map((of, i) => one(of, temperature, glycol, values[i]!, ashrae, 'confirmed by search'))),
  ...waterTable.flatMap(([temperature, values]) => names.map((of, i) => one(of, temperature, 0, values[i]!, water, 'computed by a reference library', { tolerance: waterHalf[i]! }))),
  one('density', 30, 0.1, 1009.62, ashrae, 'confirmed by search', { differs: 'The digitised set reads 1009.62; third differences of its neighbours show that 1009.92 is meant, and that is in the table here' }),
  one('density', 20, 0.277, 1038.0455, melinder, 'computed by a reference library', { tolerance: 0.01, differs: `${apart}, 0.35 %` }),
  one('specific-heat', 80, 0.277, 3877.674, melinder, 'computed by a reference library', { tolerance: 0.1, differs: `${apart}, 0.7 %` }),
  one('conductivity', 80, 0.277, 0.5162, melinder, 'computed by a reference library', { tolerance: 1e-4, differs: `${apart}, 1.4 %` }),
  one('viscosity', 80, 0.277, 0.6388, melinder, 'computed by a reference library', { tolerance: 1e-3, differs: `${apart}, 2 %` }),
  {
    id: 'coolant-density-beyond-the-table', of: 'coolant-density', in: { temperature: '250 °F', glycol: 0.5 }, out: { out: { value: 62.78, unit: 'lb/ft³', tolerance: 0.005 } },
    source: 'ASHRAE Handbook of Fundamentals, density of ethylene glycol solutions in inch-pound units, 50 % at 250 °F', confidence: 'confirmed by search',
    differs: 'The metric table ends at 100 °C and is carried on straight here: 0.02 % high at 121 °C',
  },
  ...freezing.map(([glycol, value]): Check => ({ id: `coolant-freezing-${glycol}`, of: 'freezing-point', in: { glycol }, out: { out: { value, unit: '°C', tolerance: 0.05 } }, source: ashrae, confidence: 'confirmed by search' })),
  { id: 'glycol-mass-476', of: 'glycol-mass-share', in: { glycol: 0.476 }, out: { out: { value: 50, unit: '%', tolerance: 0.05 } }, source: ashrae, confidence: 'confirmed by search' },
  { id: 'glycol-mass-578', of: 'glycol-mass-share', in: { glycol: 0.578 }, out: { out: { value: 60, unit: '%', tolerance: 0.05 } }, source: ashrae, confidence: 'confirmed by search' },
]
