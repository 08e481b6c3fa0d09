import { leftWords, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { Moved } from '@trochoid/compute/build/since.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { system as systemStore } from '../../state/system.ts'
import { corrected } from '../../state/weighed.ts'
import { useStore } from '../parts/useStore.ts'

const counted = (n: number): string => ['No margin', 'One margin', 'Two margins', 'Three margins', 'Four margins'][n] ?? `${n} margins`

/** A build that was last weighed under earlier formulas: what was corrected, what it moved, from what to what. */
export function Corrected() {
  const of = useStore(corrected)
  const system = useStore(systemStore)
  if (of === null) return null
  const why = of.moved.filter(({ by }) => by.length > 0)
  const others = of.moved.filter(({ by }) => by.length === 0)
  return (
    <>
      <p role="status"><strong>{counted(why.length)} of “{of.name}” moved because {of.corrections.length === 1 ? 'this formula was' : 'these formulas were'} corrected since it was last weighed.</strong></p>
      <ul class="small">{of.corrections.map((c) => <li key={`${c.edition} ${c.says}`}>{c.date}: {c.says}</li>)}</ul>
      {why.length > 0 && <ul class="small">{why.map((m) => <li key={m.id}>{words(m, system)}</li>)}</ul>}
      {others.length > 0 && <details><summary class="small">{counted(others.length)} moved as well, though no correction names {others.length === 1 ? 'it' : 'them'}</summary><ul class="small">{others.map((m) => <li key={m.id}>{words(m, system)}</li>)}</ul></details>}
      {of.changed && <p class="small">The build’s own numbers were changed since then too: not all of this is the formulas’ doing.</p>}
      <p class="no-print"><button type="button" onClick={of.accept}>I have seen it</button></p>
    </>
  )
}

function words({ before, now }: Moved, system: System): string {
  const say = (w: Weighed): string => { const left = leftWords(w, system); return left === '' ? stateWord(w) : `${stateWord(w)}, ${left}` }
  return `${now.margin.title}: was ${say({ ...now, ...before })}; now ${say(now)}.`
}
