import { kinds, type Kind } from '@trochoid/compute/quantity/kinds.ts'
import type { Way, Ways } from './value.ts'

/** Units of both systems in which an equation shows a kind, where its quantity asks for no others: there a temperature is absolute. */
export const usualUnits = (kind: Kind): readonly [string, string] => (kind === 'temperature' ? ['K', '°R'] : [kinds[kind].metric, kinds[kind].imperial])

/**
 * How the values of a step are written, as the step carries it on the page: place, name, then kind and units, or the words of its
 * choices. `i.drop;Pressure drop;pressure;bar;psi|i.by;Described by;?;geometry=its housing`. Usual units are left out.
 */
export const waysText = (ways: Ways): string => Object.entries(ways).map(([place, way]) => [place, way.name, ...rest(way)].join(';')).join('|')

function rest({ kind, units, choices }: Way): readonly string[] {
  if (choices) return ['?', ...Object.entries(choices).map(([value, words]) => `${value}=${words}`)]
  if (!kind || !units) return []
  return String(units) === String(usualUnits(kind)) ? [kind] : [kind, ...units]
}

export const waysOf = (text: string): Ways => Object.fromEntries(text.split('|').map((line) => {
  const [place, name, kind, ...more] = line.split(';') as [string, string, ...string[]]
  return [place, { name, ...(kind === '?' ? { choices: Object.fromEntries(more.map((one) => one.split(/=(.*)/s) as [string, string])) } : kind && { kind: kind as Kind, units: more.length > 0 ? (more as unknown as readonly [string, string]) : usualUnits(kind as Kind) }) }]
}))
