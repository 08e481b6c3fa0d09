import { type Check } from '../check.ts'

const number = (value: number, tolerance: number, unit = '1') => ({ out: { value, unit, tolerance } })

export const checks: readonly Check[] = [
  { id: 'air-flow-two-rotors', of: 'air-mass-flow', in: { volumetricEfficiency: 0.92, density: 101325 / (287.05 * 298.15), displacement: '654.715 cm³', rotors: 2, speed: '7500 rpm' }, out: number(0.178281, 2e-6, 'kg/s'),
    source: 'One intake per rotor and shaft turn, density with 287.05 J/(kg K); computed with Python', confidence: 'derived independently' },
  { id: 'air-flow-four-stroke', of: 'air-mass-flow', in: { volumetricEfficiency: 0.847, density: 1.181, displacement: 5e-4, rotors: 6, speed: '1800 rpm' }, out: number(0.09, 1e-3, 'kg/s'),
    source: 'W. W. Pulkrabek, Engineering Fundamentals of the IC Engine, examples 2-2 and 2-3: six cylinders at 3600 rpm, one intake in two turns, put in as half the speed', confidence: 'from memory' },
  { id: 'clearance-gas-1.5', of: 'clearance-gas-factor', in: { backPressureRatio: 1.5, compressionRatio: 9 }, out: number(0.955, 5e-4),
    source: 'C. F. Taylor, The Internal Combustion Engine, volume 1, chapter 6: (γ - 1)/γ + (r - p_e/p_i)/(γ (r - 1)) by hand', confidence: 'from memory' },
  ...([[6, 0.51164], [7, 0.54084], [8, 0.56472], [8.5, 0.57515], [9, 0.58476], [9.5, 0.59364], [10, 0.60189], [11, 0.61678], [12, 0.62989]] as const).map(([compressionRatio, efficiency]): Check => ({
    id: `otto-${compressionRatio}`, of: 'otto-efficiency', in: { compressionRatio, ratioOfSpecificHeats: 1.4 }, out: number(efficiency, 6e-6), source: '1 - r^(1 - k), J. B. Heywood (1988), equation 5.31; computed with Python', confidence: 'derived independently',
  })),
  { id: 'otto-cengel', of: 'otto-efficiency', in: { compressionRatio: 8, ratioOfSpecificHeats: 1.4 }, out: number(0.565, 5e-4),
    source: 'Y. A. Çengel, M. A. Boles, Thermodynamics, example 9-2, constant specific heats: 56.5 %', confidence: 'from memory' },
  { id: 'compression-cengel', of: 'end-of-compression', in: { pressure: 100e3, temperature: 290, compressionRatio: 8, ratioOfSpecificHeats: 1.4 },
    out: { temperature: { value: 666.2, unit: 'K', tolerance: 0.1 }, pressure: { value: 1837.9, unit: 'kPa', tolerance: 0.1 } },
    source: 'Data of Y. A. Çengel, M. A. Boles, Thermodynamics, example 9-2, recomputed at constant specific heats', confidence: 'derived independently' },
  ...([[99, 25, 1, 1], [97.5, 30, 1.02816, 1.02871], [101.3, 15, 0.95369, 0.9531]] as const).flatMap(([dry, t, sae, iso]): Check[] => [
    { id: `sae-correction-${dry}-${t}`, of: 'sae-correction', in: { dryPressure: dry * 1000, temperature: t + 273.15 }, out: number(sae, 2e-5),
      source: 'SAE J1349 (1990 on): 1.18 (99/p_d) sqrt((t + 273)/298) - 0.18, formula found by search, evaluated with Python', confidence: 'derived independently' },
    { id: `iso-correction-${dry}-${t}`, of: 'iso-correction', in: { dryPressure: dry * 1000, temperature: t + 273 }, out: number(iso, 2e-5),
      source: 'ISO 1585 and UN R85, spark ignition: (99/p_d)^1.2 (T/298)^0.6, formula from memory, evaluated with Python', confidence: 'from memory' },
  ]),
  { id: 'mean-pressure-test-engine', of: 'mean-effective-pressure', in: { power: '150 hp', displacement: '60 in³', rotors: 1, speed: '6187.5 rpm' }, out: number(160, 3e-3, 'psi'),
    source: 'IMechE Conf. Proc. 183 (1968), paper 8, abstract: 150 hp and 160 psi from 60 in³, not stated to be one point; speed by N = 396000 P/(bmep V) with one power pulse per shaft turn', confidence: 'confirmed by search' },
]
