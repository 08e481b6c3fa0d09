import { registry } from '../registry.ts'

/** What a discipline of the computation package is called, in the order of the chapters. */
const names: Readonly<Record<string, string>> = {
  engine: 'Engine and air', spark: 'Spark and electrics', boost: 'Turbo matching', fuel: 'Fuel', oil: 'Oil', cooling: 'Heat and cooling', driveline: 'Clutch and rotating parts', media: 'Air, gases and fluids', build: 'The coupled build', uncertainty: 'Chance and tolerances',
}
/** Cautions that fit every page of a discipline. */
const cautionsOf: Readonly<Record<string, readonly string[]>> = {
  engine: ['knock', 'emission-law'], spark: ['electrical'], boost: ['rotating-burst', 'hot-metal'], fuel: ['fuel-vapour', 'pressurised-fuel'], oil: ['hot-oil', 'waste-oil'],
  cooling: ['hot-pressurised-coolant', 'hot-metal'], driveline: ['rotating-burst', 'lifting'],
}
/** Chapter of each discipline, by the id of its theme. */
const themes: Readonly<Record<string, string>> = { boost: 'turbo', media: 'engine', build: 'start', uncertainty: 'start' }

export type Discipline = { readonly id: string; readonly name: string; readonly theme: string; readonly cautions: readonly string[] }

/** Every folder of the package that declares a quantity or a formula. */
export function disciplines(): readonly Discipline[] {
  const folders = new Set([...[...registry.quantities.values()].map((q) => q.folder), ...[...registry.formulas.values()].map((f) => f.folder)])
  const order = Object.keys(names)
  return [...folders].sort((a, b) => (order.indexOf(a) + 1 || 99) - (order.indexOf(b) + 1 || 99)).map((id) => ({
    id, name: names[id] ?? id[0]!.toUpperCase() + id.slice(1), theme: themes[id] ?? id, cautions: cautionsOf[id] ?? [],
  }))
}
