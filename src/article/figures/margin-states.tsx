import { sentence, stateWord, leftWords, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { State } from '@trochoid/compute/build/margin.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { Sheet, Words } from './plot/Sheet.tsx'

/** Of each state the link that stands for it: the first of the list, which begins with the worst. */
type Data = readonly { readonly state: State; readonly of: Weighed | null }[]

const states: readonly State[] = ['short', 'tight', 'holds', 'not known']
/** The bar as the margins page draws it: the limit, then one threshold of strip, cut off three thresholds in. */
const limit = 160, unit = 160
const at = (w: Weighed): number => Math.max(2, Math.min(640, limit + ((w.left ?? 0) / (w.tight || 1)) * unit))
const fill: Readonly<Record<State, string>> = { 'short': 'fill-bad', 'tight': 'fill-warn', 'holds': 'fill', 'not known': '' }

const amount = (w: Weighed, system: System): string =>
  w.left !== null ? `${stateWord(w)}, ${leftWords(w, system)}` : `${stateWord(w)}: ${w.missing.length > 0 ? 'a number is missing' : 'no solution here'}`

export default figure<Data>({
  title: 'One link of each state, with its bar',
  from: ({ weighed }) => states.map((state) => ({ state, of: weighed.find((w) => w.state === state && !w.margin.always) ?? null })),
  summary(data, system) {
    const none = data.filter(({ of }) => !of).map(({ state }) => `“${state}”`)
    const first = data.find(({ of }) => of?.left != null)?.of
    return `The bar begins at the upright line, where just as much is given as is asked. To the right something is left; through the shaded strip it is less than the threshold, and the word is tight. To the left it is short. Where a number is missing there is no bar at all.${first ? ` In words, the worst of these: “${sentence(first, system)}”` : ''}${none.length > 0 ? ` No link of this build is ${none.join(' or ')} now.` : ''}`
  },
  Picture({ data, system }) {
    const step = 84, top = 40
    return (
      <Sheet says="Four margins with their bars: short, tight, holding, not known." height={top + step * data.length}>
        <Words x={limit - 8} y={16} anchor="end" strong>short</Words>
        <Words x={limit + 8} y={16} strong>tight</Words>
        <Words x={limit + unit + 8} y={16} strong>holds</Words>
        {data.map(({ state, of }, i) => {
          const y = top + i * step
          return (
            <g key={state}>
              <text class={of ? 'strong' : undefined} x="0" y={y + 16}>{of ? of.margin.title : `No link is ${state}`}</text>
              {of?.left != null && (
                <>
                  <rect class="area" x={limit} y={y + 28} width={unit} height="20" />
                  <rect class={fill[state]} x={Math.min(limit, at(of))} y={y + 33} width={Math.abs(at(of) - limit)} height="10" />
                  <line class="line" x1={limit} x2={limit} y1={y + 25} y2={y + 51} />
                </>
              )}
              {of && <text x={limit} y={of.left === null ? y + 42 : y + 68}>{amount(of, system)}</text>}
            </g>
          )
        })}
      </Sheet>
    )
  },
  table: (data, system) => ({
    head: ['State', 'Link', 'Left', 'Threshold'],
    rows: data.map(({ state, of }) => [state, of?.margin.title ?? 'none', of && of.left !== null ? leftWords(of, system) : '–', of && of.left !== null ? leftWords({ ...of, left: of.tight }, system) : '–']),
  }),
})
