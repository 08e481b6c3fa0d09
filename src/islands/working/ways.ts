import { kinds, type Kind } from '@trochoid/compute/quantity/kinds.ts'
import type { Way } from './value.ts'

/** Units of both systems in which an equation shows a kind, where its quantity asks for no others: there a temperature is absolute. */
export const usualUnits = (kind: Kind): readonly [string, string] => (kind === 'temperature' ? ['K', '°R'] : [kinds[kind].metric, kinds[kind].imperial])

/**
 * How one value of a step is written, as its slot carries it on the page: place, name, then kind and units, or the words of its
 * choices. `i.drop;Pressure drop;pressure;bar;psi`, `i.by;Described by;?;geometry=its housing`. Usual units are left out.
 */
export const slotText = (place: string, way: Way): string => (way.fixed === undefined ? [place, way.name, ...rest(way)].join(';') : place)

function rest({ kind, units, choices }: Way): readonly string[] {
  if (choices) return ['?', ...Object.entries(choices).map(([value, words]) => `${value}=${words}`)]
  if (!kind || !units) return []
  return String(units) === String(usualUnits(kind)) ? [kind] : [kind, ...units]
}

export function slotOf(text: string): readonly [place: string, way: Way] {
  const [place, name = '', kind, ...more] = text.split(';') as [string, string, ...string[]]
  if (kind === '?') return [place, { name, choices: Object.fromEntries(more.map((one) => one.split(/=(.*)/s) as [string, string])) }]
  return [place, kind ? { name, kind: kind as Kind, units: more.length > 0 ? (more as unknown as readonly [string, string]) : usualUnits(kind as Kind) } : { name }]
}
