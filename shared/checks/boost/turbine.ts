import { type Check } from '../check.ts'

/** Turbine power, temperature, flow and balance. */
export const checks: readonly Check[] = [
  {
    id: 'turbine-gtt-2-1-power', of: 'turbine-power',
    in: { flow: '1 kg/s', temperature: '1100 K', expansionRatio: 3.654, efficiency: 0.87, specificHeat: 1148, heatRatio: 4 / 3 },
    out: { out: { value: 304.0, unit: 'kW', tolerance: 0.12 } },
    source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1 (the book takes γ/(γ-1) = 4; statement and net work of 136.8 kJ/kg confirmed by search, intermediate numbers from memory); the ratio 3.654 and the temperature drop 264.8 K are printed to four figures', confidence: 'from memory',
  },
  {
    id: 'turbine-gtt-2-1-temperature', of: 'turbine-outlet-temperature',
    in: { temperature: '1100 K', expansionRatio: 3.654, efficiency: 0.87, heatRatio: 4 / 3 },
    out: { out: { value: 835.2, unit: 'K', tolerance: 0.1 } },
    source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1 (the book takes γ/(γ-1) = 4; statement and net work of 136.8 kJ/kg confirmed by search, intermediate numbers from memory): a drop of 264.8 K', confidence: 'from memory',
  },
  {
    id: 'turbine-balance-power', of: 'turbine-power',
    in: { flow: '0.325 kg/s', temperature: '1173.15 K', expansionRatio: 1.45831, efficiency: 0.7, specificHeat: 1150, heatRatio: 1.33 },
    out: { out: { value: 27.4277, unit: 'kW', tolerance: 0.0005 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'turbine-balance-temperature', of: 'turbine-outlet-temperature',
    in: { temperature: '1173.15 K', expansionRatio: 1.45831, efficiency: 0.7, heatRatio: 1.33 },
    out: { out: { value: 1099.765, unit: 'K', tolerance: 0.001 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'turbine-balance-asked', of: 'turbine-power-asked',
    in: { compressor: '26.6049 kW', mechanicalEfficiency: 0.97 },
    out: { out: { value: 27.4277, unit: 'kW', tolerance: 6e-05 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'turbine-balance-delivered', of: 'shaft-power-balance',
    in: { turbine: '27.4277 kW', mechanicalEfficiency: 0.97 },
    out: { out: { value: 26.6049, unit: 'kW', tolerance: 6e-05 } },
    source: 'Invented case, equations of Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'turbine-ellipse-half', of: 'turbine-flow',
    in: { inletPressure: 202650, inletTemperature: '288.15 K', outletPressure: 101325, flowCapacity: '0.2 kg/s' },
    out: { out: { value: 0.34641016, unit: 'kg/s', tolerance: 1e-08 } },
    source: 'Ellipse law at an expansion ratio of 2: √(1 - 1/4) of the limit, worked out by hand', confidence: 'derived independently',
  },
  {
    id: 'turbine-balance-scipy-1', of: 'turbine-balance-pressure',
    in: { power: 27427.7, outletPressure: 101325, inletTemperature: 1173.15, flowCapacity: 0.25, efficiency: 0.7, specificHeat: 1150, heatRatio: 1.33 },
    out: { out: { value: 191528.6264, unit: 'Pa', tolerance: 0.2 } },
    source: 'The two equations solved by scipy 1.10.1, optimize.brentq (tests/reference/boost.py)', confidence: 'computed by a reference library',
  },
  {
    id: 'turbine-balance-scipy-2', of: 'turbine-balance-pressure',
    in: { power: 32000, outletPressure: 132000, inletTemperature: 1210, flowCapacity: 0.21, efficiency: 0.55, specificHeat: 1330, heatRatio: 1.287 },
    out: { out: { value: 272991.7769, unit: 'Pa', tolerance: 0.2 } },
    source: 'The two equations solved by scipy 1.10.1, optimize.brentq (tests/reference/boost.py)', confidence: 'computed by a reference library',
  },
  {
    id: 'turbine-balance-scipy-3', of: 'turbine-balance-pressure',
    in: { power: 500, outletPressure: 102000, inletTemperature: 1000, flowCapacity: 0.21, efficiency: 0.55, specificHeat: 1270, heatRatio: 1.3 },
    out: { out: { value: 109473.3044, unit: 'Pa', tolerance: 0.2 } },
    source: 'The two equations solved by scipy 1.10.1, optimize.brentq (tests/reference/boost.py)', confidence: 'computed by a reference library',
  },
  {
    id: 'turbine-balance-scipy-4', of: 'turbine-balance-pressure',
    in: { power: 60000, outletPressure: 150000, inletTemperature: 1250, flowCapacity: 0.35, efficiency: 0.65, specificHeat: 1340, heatRatio: 1.285 },
    out: { out: { value: 288349.6618, unit: 'Pa', tolerance: 0.2 } },
    source: 'The two equations solved by scipy 1.10.1, optimize.brentq (tests/reference/boost.py)', confidence: 'computed by a reference library',
  },
]
