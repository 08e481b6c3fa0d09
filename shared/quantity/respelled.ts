import { units, unitsNamed } from './units.ts'

/**
 * Units whose spelling would mean something else to a parser of sums (`in`, `"`, `°C`, `%`, `N m`, `kPa abs`) are given names of
 * their own; `spelt` tells them back.
 */
export function respelled(typed: string): { readonly text: string; readonly spelt: ReadonlyMap<string, string> } {
  const spelt = new Map<string, string>()
  const named = (unit: string): string => {
    const name = `u${[...unit].map((c) => c.charCodeAt(0).toString(36)).join('')}q`
    spelt.set(name, unit)
    return ` ${name} `
  }
  const text = typed
    .replace(odd, named)
    // Compounds in another case: `CC/MIN`, `l/H`.
    .replace(/[A-Za-z]+\/[A-Za-z]+(?![\w^])/g, (unit) => (unitsNamed(unit).length > 0 ? named(unit) : unit))
  return { text, spelt }
}

const letter = 'A-Za-zµμΩ°Δ²³⁴₂'
const spellings = [...new Set(units.flatMap((u) => [u.name, ...u.also]))].filter((s) => !/^\d/.test(s) && (s === 'in' || !/^[A-Za-z]+$/.test(s)))
const escaped = (s: string): string => s.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')
const odd = new RegExp(`(?<![${letter}])(?:${spellings.sort((a, b) => b.length - a.length).map(escaped).join('|')})(?![${letter}])`, 'g')
