import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { kinds, type Kind } from '@trochoid/compute/quantity/kinds.ts'
import { quantity, type Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { unitsOf } from '@trochoid/compute/quantity/units.ts'
import { inUnit, write, writeNumber } from '@trochoid/compute/quantity/write.ts'
import { typed } from './fields.ts'

const wide = (kind: Kind, unit: { factor: number; offset: number }): Quantity => quantity('Anything', 'x', kind, [unit.offset - 5e5 * unit.factor, unit.offset + 5e5 * unit.factor], unit.factor)

/** A pressure that was typed without saying goes on as what its field takes it for. */
const stays = ({ name }: { name: string }, kind: Kind): string => (/abs|gauge/.test(name) ? name : kind === 'pressure' ? `${name} abs` : kind === 'gaugePressure' ? `${name} gauge` : name)

describe.each(Object.keys(kinds) as Kind[])('%s', (kind) => {
  test('what is written in any of its units is read back as the same', () => {
    for (const unit of unitsOf(kind)) {
      const of = wide(kind, unit)
      fc.assert(fc.property(fc.double({ min: 0.001, max: 1e6, noNaN: true }), fc.constantFrom(3, 6, 12), (x, figures) => {
        const si = x * unit.factor + unit.offset
        const text = write(si, of, unit.name, figures)
        const read = unit.name === '1' ? typed(text, of, '1') : typed(text, of)
        if (kind === 'pressure' && !read.ok && read.fault === 'ambiguous' && !/abs/.test(unit.name)) return
        // "1,234" is never written, so nothing else may be asked.
        if (!read.ok) throw new Error(`${text}: ${read.says}`)
        const back = inUnit(read.value, of, unit.name)
        expect(Math.abs(back - x) / Math.abs(x), `${text} for ${x} ${unit.name}`).toBeLessThan(0.6 * 10 ** (1 - figures) + 1e-9 * (1 + Math.abs(unit.offset / unit.factor / x)))
        if (unit.name !== '1' && unit.name !== kinds[kind].metric) expect(read.unit).toBe(stays(unit, kind))
      }), { numRuns: 25 })
    }
  })
  test('every other spelling of a unit is read as that unit', () => {
    for (const unit of unitsOf(kind)) for (const spelling of unit.also) {
      const read = typed(`12 ${spelling}`, wide(kind, unit))
      if (kind === 'pressure' && !read.ok && read.fault === 'ambiguous') continue
      if (!read.ok) throw new Error(`12 ${spelling}: ${read.says}`)
      expect(read.value, spelling).toBeCloseTo(12 * unit.factor + unit.offset, 12)
    }
  })
})

describe('writing', () => {
  test.each([[7600, 3, '7600'], [76000, 3, '76 000'], [0, 3, '0'], [-5, 3, '−5.00'], [0.12345, 3, '0.123'], [9.999, 3, '10.0'], [1e8, 3, '1 × 10⁸'], [1.25e-7, 3, '1.25 × 10⁻⁷'], [NaN, 3, '–'], [Infinity, 3, '–']] as const)('%s to %s figures', (value, figures, text) => {
    expect(writeNumber(value, figures).replaceAll('\u2009', ' ')).toBe(text)
  })
})
