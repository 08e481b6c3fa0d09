import { leftWords, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import type { Chance, Counted } from '@trochoid/compute/uncertainty/chances.ts'
import { chanceWords, errorWords, firstOrderWords, leftInterval, partsWords } from '@trochoid/compute/uncertainty/chanceWords.ts'
import { csv } from '../parts/files.ts'
import { glyph } from '../margins/words.ts'

type Of = { chances: readonly Chance[]; weighed: readonly Weighed[]; samples: number; system: System }
const byId = (weighed: readonly Weighed[]): ReadonlyMap<string, Weighed> => new Map(weighed.map((w) => [w.id, w]))
const heads = ['Link', 'As it stands', 'Chance that it has what it is asked', 'and its reserve', 'Left, 95 times in 100', 'Owes its doubt to', 'First-order sum'] as const

/** The chance of every link, least likely first; knock before all, never told. */
export function Table({ chances, weighed, samples, system }: Of) {
  const known = byId(weighed)
  const knock = weighed.find((w) => w.margin.always)
  return (
    <div class="scroll" tabindex={0} role="group" aria-label="Chance of every link">
      <table class="chances">
        <thead><tr>{heads.map((head) => <th scope="col" key={head}>{head}</th>)}</tr></thead>
        <tbody>
          {knock && <tr><th scope="row">{knock.margin.title}</th><td colSpan={6}>? not known: no tolerance in the sheet tells it</td></tr>}
          {chances.map((c) => {
            const of = known.get(c.id)
            if (!of) return null
            return (
              <tr key={c.id} data-link={c.id}>
                <th scope="row">{of.margin.title}</th>
                <td><span aria-hidden="true">{glyph[of.state]}</span> {[stateWord(of), leftWords(of, system)].filter(Boolean).join(', ')}</td>
                {c.enough && c.reserve
                  ? <><Told of={c.enough} /><Told of={c.reserve} /><td>{leftInterval(of, c.interval, system)}{c.known < samples && <><br /><span class="small">no answer in {samples - c.known} of {samples}</span></>}</td><td>{partsWords(c.parts)}</td><td>{firstOrderWords(c)}</td></>
                  : <td colSpan={5}>not known: a number it rests on is missing</td>}
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}
function Told({ of }: { of: Counted }) {
  const error = errorWords(of)
  return <td><strong>{chanceWords(of)}</strong>{error && <><br /><span class="small soft">{error}</span></>}</td>
}

/** The same as rows of text and plain numbers. */
export function chanceCsv({ chances, weighed, samples, system }: Of): string {
  const known = byId(weighed)
  const share = (of: Counted | null): readonly string[] => (of ? [String(of.share), String(of.low), String(of.high)] : ['', '', ''])
  return csv([
    ['link', 'state', 'chance of what is asked', 'low', 'high', 'chance of the reserve too', 'low', 'high', 'left, low', 'left, high', 'samples with an answer', 'owes its doubt to', 'first-order chance', 'linear', 'in words'],
    ...chances.map((c) => {
      const of = known.get(c.id)!
      return [of.margin.title, stateWord(of), ...share(c.enough), ...share(c.reserve), ...c.interval.map((x) => (Number.isFinite(x) ? String(x) : '')), `${c.known} of ${samples}`, partsWords(c.parts), c.firstOrder ? String(c.firstOrder.enough) : '', c.firstOrder ? String(c.firstOrder.linear) : '', leftInterval(of, c.interval, system)]
    }),
  ])
}
