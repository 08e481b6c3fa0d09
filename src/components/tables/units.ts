import { kinds } from '@trochoid/compute/quantity/kinds.ts'
import { unitsOf } from '@trochoid/compute/quantity/units.ts'
import type { Shape } from '@trochoid/compute/quantity/quantity.ts'
import { siUnit } from '@trochoid/compute/quantity/siUnit.ts'
import type { Part, ReferenceTable } from './table.ts'

const shown = ['pressureDifference', 'massFlow', 'volumeFlow', 'power', 'torque', 'volume', 'length', 'mass', 'force', 'speed', 'temperature', 'energy', 'density', 'dynamicViscosity', 'kinematicViscosity', 'inertia', 'unbalance', 'specificFuel'] as const

const raised = (power: string): string => [...power].map((sign) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] ?? '⁻').join('')
/** As many figures as a conversion needs. */
const factor = (value: number): string => {
  const text = Number(value.toPrecision(7)).toString()
  return text.includes('e') ? text.replace(/e([+-]?)(\d+)/, (_, sign: string, power: string) => ` × 10${raised(sign === '-' ? `-${power}` : power)}`) : text
}

const named = (says: string): string => says.replace(/^an? (.)/, (_, first: string) => first.toUpperCase())

const part = (kind: (typeof shown)[number]): Part => ({
  id: kind.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), title: named(kinds[kind].says),
  head: ['Unit', `In ${siUnit({ kind } as Shape).replace(/\^(-?\d)/g, (_, power: string) => raised(power))}`, 'Also typed as'],
  rows: unitsOf(kind).map(({ name, factor: times, offset, also }) => [name, offset === 0 ? factor(times) : `${factor(times)} × number + ${factor(offset)}`, also.join(', ')]),
})

export const units: ReferenceTable = {
  id: 'units', title: 'Unit conversions', also: 'cc per min lb per hour lb/min kg psi bar hp kW convert gallon ounce conversion factor imperial metric',
  says: 'What one of each unit is in SI, and how it may be typed in any field of the handbook.',
  parts: shown.map(part),
  notes: ['Injector flow in lb/h is mass, in cm³/min volume: between them stands the density of the fluid. For petrol of 745 kg/m³, 1 lb/h is 10.15 cm³/min.', 'A bare “gal”, “oz” or “pt” is asked about when typed: US and imperial ones differ by a fifth.', 'Gauge and absolute pressure differ by the air’s own pressure, and no factor turns one into the other.'],
  sources: ['definition'], cautions: ['model-only'], calculators: ['injector-flow-at-pressure', 'corrected-flow-of-a-point'],
}
