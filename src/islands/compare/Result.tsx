import type { Field } from '@trochoid/compute/build/field.ts'
import { compare } from '@trochoid/compute/comparison/compare.ts'
import { valueWords, type Said } from '@trochoid/compute/comparison/differing.ts'
import { namesOf } from '@trochoid/compute/comparison/inWords.ts'
import type { Moved } from '@trochoid/compute/comparison/movedMargins.ts'
import type { Side } from '@trochoid/compute/comparison/side.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { saveFile } from '../parts/files.ts'
import { fromWords, glyph, legend } from '../margins/words.ts'
import type { Told } from '../sweep/values.ts'
import { Curves } from './Curves.tsx'
import { comparisonCsv, standing } from './tables.ts'

type Props = { a: Side; b: Side; fields: ReadonlyMap<string, Field>; system: System; values: readonly Told[] }

/** Two builds side by side: in words, link by link, number by number, and as curves. */
export function Result({ a, b, fields, system, values }: Props) {
  const comparison = compare(a, b, fields, system)
  const { says, moved, differs } = comparison
  const names = namesOf(a, b)
  const unmoved = a.weighed.filter((w) => !w.margin.always).length - moved.length
  return (
    <>
      <div role="status" class="said">{says.length > 0 && <p class="answer">{says[0]}</p>}{says.slice(1).map((sentence) => <p key={sentence}>{sentence}</p>)}</div>
      <div class="row no-print">
        <button type="button" onClick={() => saveFile('two-builds.csv', 'text/csv', comparisonCsv(comparison, names, system))}>Save as CSV</button>
        <button type="button" onClick={() => print()}>Print</button>
      </div>

      <h2 id="links">Links that moved</h2>
      {moved.length > 0 && (
        <div class="scroll" tabindex={0} role="group" aria-label="Links that moved">
          <table>
            <thead><tr><th scope="col">Link</th><th scope="col">{names[0]}</th><th scope="col">{names[1]}</th><th scope="col">So it</th></tr></thead>
            <tbody>{moved.map((m) => <tr key={m.id}><th scope="row">{m.before.margin.title}</th><State of={m.before} system={system} /><State of={m.after} system={system} /><td>{turns[m.turn] ?? (m.steps > 0 ? 'gains' : 'loses')}</td></tr>)}</tbody>
          </table>
        </div>
      )}
      <p class="small soft">{unmoved === 0 ? 'Every other link' : `${unmoved} other links`} did not move. Knock is not known for either. {legend}</p>

      <h2 id="numbers">Numbers that differ</h2>
      {differs.length === 0 ? <p>None.</p> : (
        <div class="scroll" tabindex={0} role="group" aria-label="Numbers that differ">
          <table>
            <thead><tr><th scope="col">Number of the sheet</th><th scope="col">{names[0]}</th><th scope="col">{names[1]}</th></tr></thead>
            <tbody>{differs.map((d) => <tr key={d.path}><th scope="row">{d.name}</th><Value of={d.before} field={d.field} system={system} /><Value of={d.after} field={d.field} system={system} /></tr>)}</tbody>
          </table>
        </div>
      )}

      <h2 id="curves">Over each other</h2>
      <Curves a={a} b={b} names={names} values={values} system={system} />
    </>
  )
}

const turns: Readonly<Partial<Record<Moved['turn'], string>>> = { worse: 'comes out worse', better: 'comes out better', told: 'can be told', untold: 'can no longer be told' }

function State({ of, system }: { of: Moved['before']; system: System }) {
  return <td><span aria-hidden="true">{glyph[of.state]}</span> {standing(of, system)}</td>
}
function Value({ of, field, system }: { of: Said; field: Field; system: System }) {
  return <td>{valueWords(of.value, field, system)}<br /><span class="small soft">{fromWords[of.from]}{of.note ? `: ${of.note}` : ''}</span></td>
}
