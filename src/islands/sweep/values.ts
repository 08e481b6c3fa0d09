import type { Kind } from '@trochoid/compute/quantity/kinds.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'

/** One value of the solved point, as the page was told of it: path, name, kind, units, chapter. */
export type Told = readonly [path: string, name: string, kind: Kind, metric: string, imperial: string]
export const quantityOf = ([, name, kind, metric, imperial]: Told): Quantity => ({ id: '', name, symbol: '', kind, range: [0, 1], step: 1, show: [metric, imperial] })

/** The charts of the sweep: values of one kind share one. `band` is drawn behind the first. */
export const charts: readonly { readonly id: string; readonly title: string; readonly theme: string; readonly paths: readonly string[]; readonly band?: readonly [string, string] }[] = [
  { id: 'power', title: 'Brake power', theme: 'engine', paths: ['engine.power'] },
  { id: 'torque', title: 'Torque', theme: 'engine', paths: ['engine.torque'] },
  { id: 'flows', title: 'Air, exhaust and wastegate flow', theme: 'engine', paths: ['engine.airFlow', 'boost.exhaustFlow', 'boost.wastegateFlow'] },
  { id: 'shares', title: 'Volumetric and compressor efficiency', theme: 'engine', paths: ['engine.volumetricEfficiency', 'boost.compressorEfficiency'] },
  { id: 'pressures', title: 'Pressures around the engine', theme: 'turbo', paths: ['engine.manifoldPressure', 'boost.compressorOutletPressure', 'boost.turbineInletPressure', 'boost.turbineOutletPressure'] },
  { id: 'turbo-speed', title: 'Turbocharger speed', theme: 'turbo', paths: ['boost.compressorSpeed'] },
  { id: 'intake', title: 'Air temperatures', theme: 'turbo', paths: ['boost.compressorOutletTemperature', 'engine.chargeTemperature'] },
  { id: 'exhaust', title: 'Exhaust temperature before the turbine, with its band', theme: 'turbo', paths: ['cooling.exhaustTemperature'], band: ['cooling.exhaustTemperatureLow', 'cooling.exhaustTemperatureHigh'] },
  { id: 'fuel', title: 'Fuel', theme: 'fuel', paths: ['fuel.massFlow'] },
  { id: 'heat', title: 'Where the fuel’s power goes', theme: 'cooling', paths: ['cooling.fuelPower', 'cooling.exhaustHeat', 'engine.power', 'cooling.coolantHeat'] },
]
