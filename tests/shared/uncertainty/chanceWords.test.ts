import { describe, expect, test } from 'vitest'
import { margins } from '@trochoid/compute/build/everything.ts'
import { chanceWords, errorWords, firstOrderWords, leftInterval, partsWords } from '@trochoid/compute/uncertainty/chanceWords.ts'
import { type Chance } from '@trochoid/compute/uncertainty/chances.ts'
import { shareInterval } from '@trochoid/compute/uncertainty/shareInterval.ts'

const plain = (text: string): string => text.replace(/[\u202f\u2009]/g, ' ')
const counted = (count: number, of: number) => ({ share: count / of, ...shareInterval({ share: count / of, samples: of }) })
const margin = (id: string) => ({ margin: margins.find((m) => m.id === id)! })

describe('a chance', () => {
  test('has as many figures as its sampling error leaves', () => {
    expect([plain(chanceWords(counted(1160, 2000))), plain(errorWords(counted(1160, 2000)))]).toEqual(['58 %', '56 to 60 %'])
    expect([plain(chanceWords(counted(57_500, 100_000))), plain(errorWords(counted(57_500, 100_000)))]).toEqual(['57.5 %', '57.2 to 57.8 %'])
  })
  test('is never certain, either way', () => {
    expect(plain(chanceWords(counted(2000, 2000)))).toBe('over 99.8 %')
    expect(plain(chanceWords(counted(0, 2000)))).toBe('under 0.2 %')
    expect(plain(chanceWords(counted(500, 500)))).toBe('over 99.2 %')
    expect(plain(chanceWords(counted(1999, 2000)))).toBe('99.9 %')
  })
})
test('what is left is told in the margin’s own measure, an end without a solution in words', () => {
  expect(plain(leftInterval(margin('oil-temperature'), [-45, 33]))).toBe('−45 to 33 K')
  expect(plain(leftInterval(margin('oil-temperature'), [-45, 33], 'imperial'))).toBe('−81 to 59 °F')
  expect(plain(leftInterval(margin('clutch-torque'), [0.027, 0.48]))).toBe('2.7 to 48 %')
  expect(plain(leftInterval(margin('wastegate-passes'), [3, 2e10]))).toBe('300 to over 1000 %')
  expect(plain(leftInterval(margin('surge'), [-Infinity, 0.5]))).toBe('no solution to 50 %')
  expect(leftInterval(margin('surge'), [NaN, NaN])).toBe('')
})
test('the first-order sum says where it is not to be trusted, and where there is none', () => {
  const at = (firstOrder: Partial<NonNullable<Chance['firstOrder']>> | null) => plain(firstOrderWords({ firstOrder } as Chance))
  expect([at({ enough: 0.58, linear: true }), at({ enough: 0.58, linear: false }), at({ enough: 1, linear: true }), at(null)]).toEqual(['58 %', '58 %, not linear', 'over 99.9 %', 'none: it jumps'])
})
test('what a link owes its doubt to is named with its share', () => {
  expect(plain(partsWords([{ input: 'a', name: 'Indicated quality', share: 0.456, up: true }, { input: 'b', name: 'Ram recovery', share: 0.09, up: false }]))).toBe('indicated quality (46 %), ram recovery (9 %)')
})
