import { HTMLElement, parse } from 'node-html-parser'
import { describe, expect, test } from 'vitest'
import { describe as described } from '../../src/article/working/described.ts'
import { mathml } from '../../src/article/working/mathml.ts'
import { plainOf, texOf, type MathElement } from '../../src/islands/working/math.ts'
import { slotOf, slotText } from '../../src/islands/working/ways.ts'
import { registry } from '../../src/registry.ts'

const element = (node: HTMLElement): MathElement => ({ localName: node.rawTagName, textContent: node.text, getAttribute: (name) => node.getAttribute(name) ?? null, children: node.childNodes.filter((one) => one instanceof HTMLElement).map(element) })
const mathOf = (markup: string): MathElement => element(parse(markup).querySelector('math')!)
/** Elements and text alone: how a sign is spaced is the setter's. */
const bare = (node: MathElement): string => {
  if (node.textContent === '\u2061') return ''
  const inside = Array.from(node.children, bare).join('')
  return node.children.length === 0 ? `<${node.localName}>${node.textContent}` : /^(mrow|math|mpadded)$/.test(node.localName) ? inside : `<${node.localName}>(${inside})`
}
const formulas = [...registry.formulas.values()]
const lines = formulas.flatMap((known) => described(known).lines.map((line, i) => [`${known.id} ${i}`, line] as const))

test('there are equations to copy', () => expect(lines.length).toBeGreaterThan(300))

describe('TeX copied from an equation of the page sets that equation again', () => {
  test.each(lines)('%s', (_, { symbols }) => {
    const copied = texOf(mathOf(symbols))
    expect(bare(mathOf(mathml(copied, true))), copied).toBe(bare(mathOf(symbols)))
  })
})

test('an equation is copied as a line of text with brackets where they are needed', () => {
  const plain = (tex: string): string => plainOf(mathOf(mathml(tex, true))).replaceAll('\u00a0', ' ')
  expect(plain('Q=n_{i}\\cdot\\frac{a+b}{2\\cdot c}')).toBe('Q = n_i * (a + b) / (2 * c)')
  expect(plain('x=\\sqrt{\\frac{a}{b}}^{2}')).toBe('x = sqrt(a / b)^2')
  expect(plain('p=\\left(\\text{12 mm}-b\\right)\\cdot c')).toBe('p = (12 mm - b) * c')
})

test('how the values of a step are written survives the way onto the page and back', () => {
  for (const known of formulas) {
    const { ways } = described(known)
    for (const [place, { name, kind, units, choices, fixed }] of Object.entries(ways)) {
      const [where, way] = slotOf(slotText(place, ways[place]!))
      expect(where).toBe(place)
      if (fixed === undefined) expect({ name: way.name, kind: way.kind, units: way.units, choices: way.choices }, `${known.id} ${place}`).toEqual({ name, kind, units, choices })
    }
  }
})

test('every given of an equation has a slot in it, which carries its name', () => {
  for (const known of formulas) {
    const { ways, lines } = described(known)
    const slots = lines.map((line) => line.slots).join('')
    if (lines.length > 0) for (const place of Object.keys(ways)) if (place.startsWith('i.')) expect(slots, known.id).toContain(`data-v="${place}"`)
  }
})
