import { expect, test } from 'vitest'
import { rankWorth, type Worth } from '@trochoid/compute/build/measureNext.ts'

const of = (field: string, kind: Worth['kind'], settles: number, moves: number): Worth => ({ field, kind, settles: Array.from({ length: settles }, (_, i) => `link ${i}`), moves })

test('what settles most comes first; of two that settle as many, the unknown; then what moves most', () => {
  const ranked = rankWorth([of('guess of one, small', 'guess', 1, 1), null, of('unknown of one', 'unknown', 1, Infinity), of('guess of three', 'guess', 3, 0.5), of('guess of one, large', 'guess', 1, 4), of('guess of none', 'guess', 0, 9), of('unknown of two', 'unknown', 2, Infinity)])
  expect(ranked.map((w) => w.field)).toEqual(['guess of three', 'unknown of two', 'unknown of one', 'guess of one, large', 'guess of one, small', 'guess of none'])
})
