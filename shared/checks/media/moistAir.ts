import { type Check } from '../check.ts'

const ashrae = 'ASHRAE Handbook Fundamentals 2017, chapter 1, table 3, as cited in the tests of psychrolib; ASHRAE states 300 parts in a million'
const if97 = 'IAPWS-IF97, region 4, by the Python library iapws 1.5.2 (tests/reference/humidAir.py); IAPWS states 0.025 %'
const g8 = 'IAPWS G8-10 humid air, by the Python library iapws 1.5.2 (tests/reference/humidAir.py); CIPM-2007 states 22 parts in a million'

export const checks: readonly Check[] = [
  { id: 'saturation-triple-point', of: 'saturation-pressure', in: { temperature: 273.16 }, out: { out: { value: 611.657, unit: 'Pa', tolerance: 0.01 } },
    source: 'IAPWS: triple point of water, 611.657 ± 0.010 Pa (Guildner and others 1976)', confidence: 'from memory' },
  { id: 'saturation-critical-point', of: 'saturation-pressure', in: { temperature: 647.096 }, out: { out: { value: 22.064, unit: 'MPa', tolerance: 5e-4 } },
    source: 'IAPWS: critical point of water, 647.096 K and 22.064 MPa', confidence: 'confirmed by search' },
  { id: 'saturation-normal-boiling', of: 'saturation-pressure', in: { temperature: 373.1243 }, out: { out: { value: 101325, unit: 'Pa', tolerance: 3 } },
    source: 'IAPWS-95: normal boiling point 373.1243 K', confidence: 'from memory' },
  ...([[5, 872.6], [25, 3169.7], [50, 12351.3], [100, 101418], [150, 476101.4]] as const).map(([t, pressure]): Check => ({
    id: `saturation-ashrae-${t}`, of: 'saturation-pressure', in: { temperature: `${t} °C` }, out: { out: { value: pressure, unit: 'Pa', tolerance: pressure * 3e-4 } }, source: ashrae, confidence: 'confirmed by search',
  })),
  ...([[1, 657.09], [10, 1228.18], [20, 2339.21], [30, 4246.69], [40, 7384.43], [60, 19945.8], [80, 47414.72], [120, 198665.4]] as const).map(([t, pressure]): Check => ({
    id: `saturation-if97-${t}`, of: 'saturation-pressure', in: { temperature: `${t} °C` }, out: { out: { value: pressure, unit: 'Pa', tolerance: pressure * 2.5e-4 } }, source: if97, confidence: 'computed by a reference library',
  })),
  ...([[288.15, 101325, 0.005, 1.223236], [293.15, 95000, 0.01, 1.125112], [298.15, 101325, 0.02, 1.17543], [300.15, 70000, 0.03, 0.803475], [308.15, 101325, 0.04, 1.128611], [278.15, 85000, 0.004, 1.063473]] as const)
    .map(([temperature, pressure, share, density]): Check => ({
      id: `moist-air-g8-${temperature}-${pressure}`, of: 'moist-air-density', in: { temperature, pressure, share }, out: { out: { value: density, unit: 'kg/m³', tolerance: density * 2.2e-5 } }, source: g8, confidence: 'computed by a reference library',
    })),
  { id: 'moist-air-humidity-ratio', of: 'moist-air-density', in: { temperature: '30 °C', pressure: 95461, share: 0.02 / 0.641945 }, out: { out: { value: 1.08411986, unit: 'kg/m³', tolerance: 3.3e-4 } },
    source: 'ASHRAE Handbook Fundamentals 2017, chapter 1, ideal mixture at humidity ratio 0.02, as computed in the tests of psychrolib; tolerance 300 parts in a million as there. The mole share is 0.02/(0.621945 + 0.02)', confidence: 'confirmed by search',
    differs: 'The published number is that of an ideal mixture; the real gas of CIPM-2007 is 0.03 % denser.' },
  ...([[20, 0.5, 101325, 1.199333], [35, 0.9, 101325, 1.124245], [38, 0.8, 89875, 0.984107], [45, 0.3, 95000, 1.028512]] as const).map(([t, humidity, pressure, density]): Check => ({
    id: `moist-air-weather-${t}`, of: 'moist-air-and-density-altitude', in: { airTemperature: `${t} °C`, humidity, airPressure: pressure },
    out: { density: { value: density, unit: 'kg/m³', tolerance: 6e-4 } },
    source: 'IAPWS G8-10 humid air, by Debian’s python3-iapws 1.5.2; the tolerance takes in an ideal mixture, 0.03 % lower', confidence: 'computed by a reference library',
  })),
]
