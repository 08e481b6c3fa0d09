import { type Check } from '../check.ts'

const incropera = 'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, 6th edition (2007)'
const materials = [['phenolic', 0.3], ['stainless', 17], ['steel', 50], ['aluminium', 160]] as const
const perMetre = Math.PI * 0.07

export const checks: readonly Check[] = [
  {
    id: 'coolant-heat-1-2-litres', of: 'coolant-heat-measured', in: { flow: '1.2 L/s', warming: 8, temperature: '90 °C', glycol: 0.5, fuelPower: 400e3, unburned: 80e3 }, out: { heat: { value: 35.145, unit: 'kW', tolerance: 0.001 } },
    source: 'Mass flow, specific heat and warming with ASHRAE values 1030.95 kg/m³ and 3551 J/(kg K), computed independently', confidence: 'derived independently',
  },
  { id: 'stream-holman-10-4', of: 'heat-of-stream', in: { rate: (68 / 60) * 4180, change: 40 }, out: { out: { value: 189.49, unit: 'kW', tolerance: 0.005 } }, source: 'Holman, Heat Transfer, example 10-4', confidence: 'confirmed by search' },
  { id: 'stream-incropera-11-1', of: 'heat-of-stream', in: { rate: 0.1 * 2131, change: 40 }, out: { out: { value: 8524, unit: 'W', tolerance: 0.5 } }, source: `${incropera}, example 11.1`, confidence: 'confirmed by search' },
  { id: 'stream-cengel-11-4', of: 'heat-of-stream', in: { rate: 1.2 * 4180, change: 60 }, out: { out: { value: 301, unit: 'kW', tolerance: 0.5 } }, source: 'Çengel and Ghajar, Heat and Mass Transfer, example 11-4', confidence: 'confirmed by search' },
  { id: 'stream-incropera-11-3', of: 'heat-of-stream', in: { rate: 4197, change: 90 }, out: { out: { value: 3.777e5, unit: 'W', tolerance: 100 } }, source: `${incropera}, example 11.3`, confidence: 'confirmed by search' },
  { id: 'pipe-radiates', of: 'radiated-heat', in: { surface: '200 °C', around: '25 °C', area: perMetre, emissivity: 0.8 }, out: { out: { value: 421, unit: 'W', tolerance: 0.5 } }, source: `${incropera}, example 1.2, each metre of a 70 mm steam pipe`, confidence: 'from memory' },
  { id: 'pipe-convects', of: 'convected-heat', in: { surface: '200 °C', around: '25 °C', area: perMetre, film: 15 }, out: { out: { value: 577, unit: 'W', tolerance: 0.5 } }, source: `${incropera}, example 1.2, each metre of a 70 mm steam pipe`, confidence: 'from memory' },
  { id: 'ram-at-100-km-h', of: 'ram-pressure', in: { density: 1.225, speed: '100 km/h', recovery: 1 }, out: { out: { value: 472.6, unit: 'Pa', tolerance: 0.05 } }, source: 'Dynamic pressure of standard air at 100 km/h, computed independently', confidence: 'derived independently' },
  ...materials.map(([material, value]): Check => ({
    id: `conductivity-${material}`, of: 'material-conductivity', in: { material }, out: { out: { value, unit: 'W/(m K)', tolerance: 0 } }, source: 'EN 12524 design values, as carried by the ht library', confidence: 'confirmed by search',
  })),
]
