import { sentence, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { Bar } from './Bar.tsx'
import { glyph, restsOn } from './words.ts'

/** A margin: its name, its state in a word, the bar, one sentence. */
export function Line({ of, system, nameOf }: { of: Weighed; system: System; nameOf: (path: string) => string }) {
  return (
    <>
      <div class="row between"><strong>{of.margin.title}</strong> <span class="state"><span aria-hidden="true">{glyph[of.state]}</span> {stateWord(of)}</span></div>
      {of.left !== null && <Bar of={of} />}
      <p class="sentence">{sentence(of, system, nameOf)} <span class="soft">{restsOn(of)}</span></p>
    </>
  )
}
