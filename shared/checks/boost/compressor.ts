import { type Check } from '../check.ts'

/** Compression of air: temperature, power, corrected flow. */
export const checks: readonly Check[] = [
  {
    id: 'compressor-gtt-2-1-temperature', of: 'compressor-outlet-temperature',
    in: { inletTemperature: '288 K', ratio: 4, efficiency: 0.85 },
    out: { out: { value: 452.7, unit: 'K', tolerance: 0.1 } },
    source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1 (statement and net work of 136.8 kJ/kg confirmed by search, intermediate numbers from memory)', confidence: 'from memory',
  },
  {
    id: 'compressor-gtt-2-1-power', of: 'compressor-power',
    in: { flow: '1 kg/s', inletTemperature: '288 K', outletTemperature: '452.7 K' },
    out: { out: { value: 165.5, unit: 'kW', tolerance: 0.1 } },
    source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1 (statement and net work of 136.8 kJ/kg confirmed by search, intermediate numbers from memory); 167.2 kJ/kg before the shaft’s efficiency of 0.99', confidence: 'from memory',
  },
  {
    id: 'compressor-gtt-2-1-asked', of: 'turbine-power-asked',
    in: { compressor: '165.52 kW', mechanicalEfficiency: 0.99 },
    out: { out: { value: 167.2, unit: 'kW', tolerance: 0.05 } },
    source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1 (statement and net work of 136.8 kJ/kg confirmed by search, intermediate numbers from memory)', confidence: 'from memory',
  },
  {
    id: 'compressor-balance-temperature', of: 'compressor-outlet-temperature',
    in: { inletTemperature: '298.15 K', ratio: 2, efficiency: 0.74 },
    out: { out: { value: 386.392, unit: 'K', tolerance: 0.0006 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'compressor-balance-power', of: 'compressor-power',
    in: { flow: '0.3 kg/s', inletTemperature: '298.15 K', outletTemperature: '386.392 K' },
    out: { out: { value: 26.6049, unit: 'kW', tolerance: 0.0002 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'compressor-library-8', of: 'compressor-outlet-temperature',
    in: { inletTemperature: '286.8 K', ratio: 8, efficiency: 1 },
    out: { out: { value: 519.5230938, unit: 'K', tolerance: 1e-06 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), isentropic_T_rise_compression, worked example of its documentation', confidence: 'computed by a reference library',
  },
  {
    id: 'compressor-library-2-6', of: 'compressor-outlet-temperature',
    in: { inletTemperature: '308.15 K', ratio: 2.6, efficiency: 0.7 },
    out: { out: { value: 446.3352634, unit: 'K', tolerance: 1e-06 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), isentropic_T_rise_compression', confidence: 'computed by a reference library',
  },
  {
    id: 'compressor-library-1-4', of: 'compressor-outlet-temperature',
    in: { inletTemperature: '273.15 K', ratio: 1.4, efficiency: 0.62 },
    out: { out: { value: 317.6063052, unit: 'K', tolerance: 1e-06 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), isentropic_T_rise_compression', confidence: 'computed by a reference library',
  },
  {
    id: 'corrected-flow-isa', of: 'corrected-flow',
    in: { flow: '0.3 kg/s', temperature: '308.15 K', pressure: '95 kPa abs', referenceTemperature: '288.15 K', referencePressure: '101.325 kPa abs' },
    out: { out: { value: 0.330892, unit: 'kg/s', tolerance: 6e-07 } },
    source: 'θ and δ correction (NASA Glenn, corrected airflow page) with the reference of ISO 2533 sea level, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'corrected-flow-100-kpa', of: 'corrected-flow',
    in: { flow: '0.3 kg/s', temperature: '308.15 K', pressure: '95 kPa abs', referenceTemperature: '298.15 K', referencePressure: '100 kPa abs' },
    out: { out: { value: 0.321042, unit: 'kg/s', tolerance: 6e-07 } },
    source: 'θ and δ correction (NASA Glenn, corrected airflow page) with the reference 298.15 K and 100 kPa, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'corrected-flow-20-c', of: 'corrected-flow',
    in: { flow: '0.3 kg/s', temperature: '308.15 K', pressure: '95 kPa abs', referenceTemperature: '293.15 K', referencePressure: '98.1 kPa abs' },
    out: { out: { value: 0.317616, unit: 'kg/s', tolerance: 6e-07 } },
    source: 'θ and δ correction (NASA Glenn, corrected airflow page) with the reference 293.15 K and 98.1 kPa, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'corrected-flow-545-r', of: 'corrected-flow',
    in: { flow: '0.3 kg/s', temperature: '308.15 K', pressure: '95 kPa abs', referenceTemperature: '545 °R', referencePressure: '13.95 psi abs' },
    out: { out: { value: 0.306415, unit: 'kg/s', tolerance: 6e-07 } },
    source: 'θ and δ correction (NASA Glenn, corrected airflow page) with the reference 545 °R and 13.95 psi, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'actual-flow-isa', of: 'actual-flow',
    in: { corrected: '0.330892 kg/s', temperature: '308.15 K', pressure: '95 kPa abs', referenceTemperature: '288.15 K', referencePressure: '101.325 kPa abs' },
    out: { out: { value: 0.3, unit: 'kg/s', tolerance: 1e-06 } },
    source: 'θ and δ correction (NASA Glenn, corrected airflow page), turned round', confidence: 'derived independently',
  },
]
