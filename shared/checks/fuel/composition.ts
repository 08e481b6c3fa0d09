import { type Check } from '../check.ts'

const heywood = 'J. B. Heywood, Internal Combustion Engine Fundamentals (1988)'
const afdc = 'US Department of Energy, Alternative Fuels Data Center, Properties of Fuels'
const mixed = 'Mixing by mass of ethanol 789.4 kg/m³ and gasoline 745.0 kg/m³, 10 % by volume, computed independently'

const ratio = (id: string, hydrogen: number, oxygen: number, value: number, tolerance: number, source: string): Check => ({
  id: `stoichiometry-${id}`, of: 'stoichiometric-ratio-of', in: { hydrogen, oxygen }, out: { out: { value, unit: '1', tolerance } }, source, confidence: 'from memory',
})
/** Energy of formation in J per mol of fuel and its molar mass in kg/mol. */
const heat = (id: string, hydrogen: number, oxygen: number, perMole: number, molarMass: number, value: number): Check => ({
  id: `heating-value-${id}`, of: 'heating-value-of', in: { hydrogen, oxygen, formation: perMole / molarMass }, out: { out: { value, unit: 'MJ/kg', tolerance: 0.1 } },
  source: `${heywood}, table D.4; energy of formation from Active Thermochemical Tables by way of chemicals 1.5.2`, confidence: 'from memory',
})

export const checks: readonly Check[] = [
  ratio('isooctane', 18 / 8, 0, 15.13, 0.01, `${heywood}, table D.4`),
  ratio('n-heptane', 16 / 7, 0, 15.18, 0.01, 'n-Heptane with air of 20.95 % oxygen and 28.962 g/mol, computed with chemicals 1.5.2'),
  ratio('methanol', 4, 1, 6.47, 0.01, `${heywood}, table D.4`),
  ratio('gasoline', 1.85, 0, 14.57, 0.02, `${heywood}, equation 3.6: 34.56 (4 + y) / (12.011 + 1.008 y)`),
  ratio('ethanol', 3, 0.5, 9.0, 0.05, `${afdc}: stoichiometric air-fuel ratio of ethanol 9.0`),
  heat('isooctane', 18 / 8, 0, -258800, 0.1142285, 44.3),
  heat('n-heptane', 16 / 7, 0, -223910, 0.1002019, 44.56),
  heat('methanol', 4, 1, -238400, 0.0320419, 20.0),
  { id: 'e10-mass-share', of: 'fuel-mass-share-of', in: { volumeShare: 0.1, density: 789.4, otherDensity: 745 }, out: { out: { value: 0.10533, unit: '1', tolerance: 1e-4 } }, source: mixed, confidence: 'derived independently' },
  { id: 'e10-stoichiometry', of: 'ratio-of-blend', in: { massShare: 0.10533, ratio: 9, otherRatio: 14.6 }, out: { out: { value: 14.01, unit: '1', tolerance: 0.002 } }, source: mixed, confidence: 'derived independently' },
  { id: 'e10-heat', of: 'heat-of-blend', in: { massShare: 0.10533, heat: 26.82e6, otherHeat: 44e6 }, out: { out: { value: 42.19, unit: 'MJ/kg', tolerance: 0.003 } }, source: mixed, confidence: 'derived independently' },
  { id: 'e10-density', of: 'density-of-blend', in: { volumeShare: 0.1, density: 789.4, otherDensity: 745 }, out: { out: { value: 749.44, unit: 'kg/m³', tolerance: 0.02 } }, source: mixed, confidence: 'derived independently' },
  {
    id: 'ethanol-heat', of: 'blend-heating-value', in: { ethanolShare: 1, petrolDensity: 745, petrolHeat: 43.44e6 }, out: { out: { value: 26.95, unit: 'MJ/kg', tolerance: 0.01 } },
    source: `${afdc}: lower heating value of ethanol 11,585 Btu/lb`, confidence: 'confirmed by search',
  },
  {
    id: 'ethanol-density-60f', of: 'ethanol-density-at', in: { temperature: '60 °F' }, out: { out: { value: 792, unit: 'kg/m³', tolerance: 1 } },
    source: `${afdc}: ethanol at 60 °F 6.61 lb/gal`, confidence: 'confirmed by search',
    differs: 'The table rounds to 6.61 lb/gal, 792 kg/m³; the library’s curve gives 793.2 there, as pure ethanol’s 789.3 at 20 °C lets expect',
  },
  {
    id: 'ethanol-density-20', of: 'ethanol-density-at', in: { temperature: '20 °C' }, out: { out: { value: 789.5, unit: 'kg/m³', tolerance: 2 } },
    source: 'thermo 0.6.1 and chemicals 1.5.2, ethanol at 20 °C', confidence: 'computed by a reference library',
  },
  {
    id: 'ethanol-density-20-crc', of: 'ethanol-density-at', in: { temperature: '20 °C' }, out: { out: { value: 0.7893, unit: 'g/cm³', tolerance: 0.00005 } },
    source: 'CRC Handbook of Chemistry and Physics, physical constants of organic compounds: ethanol 0.7893 g/cm³ at 20 °C', confidence: 'from memory',
    differs: 'The library’s curve, on which the formula rests, stands 0.02 % above the handbook’s figure',
  },
]
