import { leftWords, quantityOf, sentence, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { From } from '@trochoid/compute/build/sheet.ts'
import { shownUnit, write, writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { Bar } from '../margins/Bar.tsx'
import { glyph } from '../margins/words.ts'

const rests: Readonly<Record<From, string>> = {
  measured: 'The numbers it starts from were measured on these very parts.',
  maker: 'It starts from what the maker of a part states.',
  common: 'It starts from what is usual with such engines, not from these very parts.',
  guess: 'It starts from a guess, and can be no better than that.',
}

/** One margin of a build in plain words, for somebody who neither builds nor tunes: what was found, in which numbers, on what it rests, what would help. */
export function Plain({ of: w, system, nameOf }: { of: Weighed; system: System; nameOf: (path: string) => string }) {
  const { margin } = w
  const value = (si: number, of: typeof margin.demand): string => write(si, quantityOf(of), shownUnit(quantityOf(of), system))
  const title = (of: typeof margin.demand): string => of.label ?? of.shape.name
  const helps = (w.state === 'short' || w.state === 'tight') && margin.remedies.length > 0
  return (
    <>
      <p role="status" class="answer"><span aria-hidden="true">{glyph[w.state]}</span> {found(w, system)}</p>
      {w.left !== null && <Bar of={w} />}
      {w.demand !== null && w.capacity !== null && (
        <dl>
          <dt>{title(margin.demand)}</dt>
          <dd>{value(w.demand, margin.demand)}{w.speed !== null && `, worst at ${writeNumber((w.speed * 30) / Math.PI, 4)}\u202frpm of the shaft`}</dd>
          <dt>{margin.must === 'stay below' ? 'It should stay below' : 'It should stay above'}</dt>
          <dd>{value(w.capacity, margin.capacity)}: {title(margin.capacity).replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase())}</dd>
        </dl>
      )}
      {!margin.always && <p>In the words of the workshop: {sentence(w, system, nameOf)}</p>}
      {!margin.always && w.state !== 'not known' && <p>{margin.rests.length === 0 ? 'It rests on the sums alone.' : rests[w.from]} {margin.best === 'tight' && 'Such an estimate is never called enough here: at best it is tight.'}</p>}
      {helps && <><h3>What would help</h3><ul>{margin.remedies.map(({ says }) => <li key={says}>{says}</li>)}</ul></>}
      {w.state !== 'not known' && <><h3>What would settle it</h3><p>{margin.settle}</p></>}
      {margin.always && <><h3>What would tell</h3><p>{margin.settle}</p></>}
    </>
  )
}

/** What was found, without a word of the trade. */
function found(w: Weighed, system: System): string {
  const left = leftWords(w, system)
  const said = left === '' ? '' : ` (${left})`
  switch (w.state) {
    case 'holds': return `In these sums there is enough${said}.`
    case 'tight': return w.left !== null && w.left < 0 ? `In these sums it may or may not be enough${said}: the estimate is not sharp enough to say.` : `In these sums it is enough with little to spare${said}.`
    case 'short': return `In these sums it is not enough${said}.`
    case 'not known': return w.margin.always ? 'Nobody can say from sums.' : w.missing.length > 0 ? 'Nobody can say yet: a number is missing.' : 'Nobody can say yet: what comes before it has no answer.'
  }
}
