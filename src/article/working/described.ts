import type { Known } from '@trochoid/compute/formula/known.ts'
import type { About } from '@trochoid/compute/formula/formula.ts'
import { isQuantity, type Quantity, type Shape } from '@trochoid/compute/quantity/quantity.ts'
import type { Way, Ways } from '../../islands/working/value.ts'
import { usualUnits } from '../../islands/working/ways.ts'
import { mathml } from './mathml.ts'
import { symbolTex } from './symbol.ts'
import { equationTex, token, tokens } from './tex.ts'

/** One printed line of a formula: as symbols, and with slots for the values. */
export type Line = { readonly symbols: string; readonly slots: string }
export type Described = { readonly known: Known; readonly ways: Ways; /** TeX of each place's symbol. */ readonly symbols: Readonly<Record<string, string>>; readonly lines: readonly Line[]; readonly words: readonly string[] }

const oneOut = (about: About): about is About & { out: Quantity } => 'id' in about.out && typeof about.out.id === 'string'
export const outsOf = (about: About): Readonly<Record<string, Quantity>> => (oneOut(about) ? { out: about.out } : (about.out as Readonly<Record<string, Quantity>>))

/** A formula as its reader sees it: equation in symbols, equation with values, words where it is no equation. Made once for all pages. */
export function describe(known: Known): Described {
  const made = cache.get(known.id)
  if (made) return made
  const { about } = known
  const ways: Record<string, Way> = {}
  const symbols: Record<string, string> = {}
  const places = new Map<string, string>()
  for (const [name, c] of Object.entries(about.constants ?? {})) {
    symbols[`c.${name}`] = symbolTex(c.symbol)
    ways[`c.${name}`] = { name: c.name, fixed: c.unit === '1' ? String(c.value) : `${c.value}\u202f${c.unit}` }
    places.set(name, token('c', name))
  }
  for (const [name, shape] of Object.entries(about.in)) {
    symbols[`i.${name}`] = symbolOf(shape)
    ways[`i.${name}`] = wayOf(shape, about.units?.[name])
    places.set(name, token('i', name))
  }
  for (const [name, quantity] of Object.entries(outsOf(about))) {
    symbols[`o.${name}`] = symbolOf(quantity)
    ways[`o.${name}`] = wayOf(quantity, about.units?.[name])
    if (!places.has(name)) places.set(name, token('o', name))
  }
  const described = { known, ways, symbols, lines: equations(about, places).map((tex) => lineOf(tex, symbols)), words: wordsOf(about) }
  cache.set(known.id, described)
  return described
}
const cache = new Map<string, Described>()

const symbolOf = (shape: Shape): string => (isQuantity(shape) ? symbolTex(shape.symbol) : `\\text{${shape.name}}`)

function wayOf(shape: Shape, declared: string | undefined): Way {
  if (!isQuantity(shape)) return shape.kind === 'choice' ? { name: shape.name, choices: shape.choices } : { name: shape.name }
  // In an equation a temperature is absolute, whatever its field shows; every other unit carries its own factor.
  const shown = shape.kind === 'temperature' ? undefined : shape.show
  return { name: shape.name, kind: shape.kind, units: declared ? [declared, declared] : shown ?? usualUnits(shape.kind) }
}

function equations(about: About, places: ReadonlyMap<string, string>): string[] {
  const outs = Object.keys(outsOf(about))
  if ('equation' in about) {
    const each = typeof about.equation === 'string' ? { [outs[0]!]: about.equation } : about.equation
    return Object.entries(each).map(([name, equation]) => `${token('o', name)}=${equationTex(equation, places)}`)
  }
  if ('holds' in about) return [about.holds].flat().map((equation) => equation.split(/(?<![<>=])=(?!=)/).map((side) => equationTex(side, places)).join('='))
  return []
}

function lineOf(tex: string, symbolAt: Readonly<Record<string, string>>): Line {
  const put = (write: (place: string) => string) => tex.replace(tokens, (_, place: string) => write(place))
  return {
    symbols: mathml(put((place) => `{${symbolAt[place]!}}`), true),
    // The left of an explicit equation stays a symbol, so that the line reads "Q = 700 · √(…) = …".
    slots: mathml(put((place) => `{\\data{v=${place}}{\\text{0}}}`).replace(/^\{\\data\{v=o\.(\w+)\}\{\\text\{0\}\}\}=/, (_, name: string) => `{${symbolAt[`o.${name}`]!}}=`), true),
  }
}

function wordsOf(about: About): readonly string[] {
  if ('steps' in about) return about.steps
  if ('table' in about) return [about.table]
  return []
}
