import { describe, expect, it } from 'vitest'
import { tables } from '../../src/components/tables/all.ts'

const rowsOf = (id: string, part: string) => tables.find((t) => t.id === id)!.parts.find((p) => p.id === part)!.rows

describe('the tables of the reference', () => {
  it('have as many cells in every row as heads', () => {
    for (const { id, parts } of tables) for (const part of parts) for (const row of part.rows) expect(row.length, `${id} ${part.id}`).toBe(part.head.length)
  })

  it('agree with what their sources print', () => {
    // MIL-H-8794, AC 43.13-1B table 9-3: size 6 has a bore of 5/16 in.
    expect(rowsOf('hoses', 'sizes').find(([dash]) => dash === '6')![3]).toBe('0.3125')
    // One pound is 0.45359237 kg and one inch 25.4 mm by definition.
    expect(rowsOf('units', 'mass').find(([unit]) => unit === 'lb')![1]).toBe('0.4535924')
    expect(rowsOf('units', 'pressure-difference').find(([unit]) => unit === 'psi')![1]).toBe('6894.757')
    // Water boils at 100 °C at one atmosphere (99.97 on the scale of 1990).
    expect(Number(rowsOf('coolant', 'boiling')[0]![1])).toBeCloseTo(100, 0)
  })
})
