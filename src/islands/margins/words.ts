import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { From } from '@trochoid/compute/build/sheet.ts'
import type { State } from '@trochoid/compute/build/margin.ts'

/** A sign beside each word of state: the word says it, the sign only helps the eye. */
export const glyph: Readonly<Record<State, string>> = { 'holds': '✓', 'tight': '△', 'short': '✕', 'not known': '?' }

const rests: Readonly<Record<From, string>> = { measured: 'measured numbers', maker: 'a maker’s figure', common: 'common practice', guess: 'a guess' }
/** What the margin stands on: the least sure of the numbers it rests on. */
export const restsOn = (w: Weighed): string => (w.margin.always || w.state === 'not known' ? '' : w.margin.rests.length === 0 ? 'Rests on the model alone.' : `Rests on ${rests[w.from]}.`)

export const fromWords: Readonly<Record<From, string>> = { measured: 'Measured', maker: 'Maker’s figure', common: 'Common practice', guess: 'Guess' }
export const legend = 'Holds, tight and short are said of this model only: they tell what it found from the numbers given, not that a part will live.'
