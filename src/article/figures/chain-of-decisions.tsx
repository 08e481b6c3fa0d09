import { leftWords, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { glyph } from '../../islands/margins/words.ts'
import { decisions, standings, unsettled, type Standing } from './decision/order.ts'
import { figure } from './figure.ts'
import { Sheet, Words } from './plot/Sheet.tsx'

type Data = readonly Standing[]

const colour: Readonly<Record<Weighed['state'], string>> = { 'short': 'fill-bad', 'tight': 'fill-warn', 'holds': 'fill', 'not known': '' }
const told = (w: Weighed, system: System): string => (w.left === null ? `${w.margin.title}: ${stateWord(w)}` : `${w.margin.title}: ${leftWords(w, system)}`)
const counted = ({ links }: Standing): string => (['short', 'tight', 'not known', 'holds'] as const).map((state) => [links.filter((w) => w.state === state).length, state] as const).filter(([n]) => n > 0).map(([n, state]) => `${n} ${state}`).join(', ')

export default figure<Data>({
  title: 'The order of decisions, with the links of this build at each',
  from: ({ weighed }) => standings(weighed),
  summary(data, system) {
    const troubled = data.flatMap(({ worst }, i) => (worst && unsettled(worst) ? [`${i + 1}, ${decisions[i]!.name.toLowerCase()} (${told(worst, system)})`] : []))
    const back = data.flatMap(({ reaches }, i) => reaches.map((to) => `from ${i + 1} to ${to + 1}`))
    return `Each decision rests on those above it. A mark stands for each link: ${glyph.holds} holds, ${glyph.tight} tight, ${glyph.short} short, ${glyph['not known']} not known. ${troubled.length > 0 ? `Not all is settled at ${troubled.join('; ')}.` : 'Every link that can be weighed holds in this model.'}${back.length > 0 ? ` A bent line leads from a link that does not hold back to an earlier decision that could mend it: ${back.join(', ')}.` : ''} Knock stands outside the chain: it is never known here.`
  },
  Picture({ data, system }) {
    const step = 64, top = 30, x = 76
    const y = (i: number): number => top + i * step
    return (
      <Sheet says="Ten decisions in a column, each with a mark for every link that rests on it." height={top + step * data.length}>
        {data.slice(1).map((_, i) => <line key={i} class="thin" x1={x} x2={x} y1={y(i) + 16} y2={y(i + 1) - 16} />)}
        {data.flatMap(({ reaches }, i) => reaches.map((to) => {
          const out = x - 22 - 9 * Math.min(5, i - to)
          return <path key={`${i} ${to}`} class="line two" d={`M${x - 17} ${y(i)}C${out - 14} ${y(i)} ${out - 14} ${y(to)} ${x - 19} ${y(to)}m-8 -5l9 5l-9 5`} />
        }))}
        {data.map(({ links, worst }, i) => (
          <g key={decisions[i]!.name}>
            <circle class="line" cx={x} cy={y(i)} r="15" />
            <text class="strong" x={x} y={y(i) + 6} text-anchor="middle">{i + 1}</text>
            <text class="strong" x={x + 24} y={y(i) - 3}>{decisions[i]!.name}</text>
            <text x="638" y={y(i) - 3} text-anchor="end">{links.map((w) => <tspan key={w.id} class={colour[w.state]}>{glyph[w.state]}</tspan>)}</text>
            {worst && <Words x={x + 24} y={y(i) + 21}>{told(worst, system)}</Words>}
            {!worst && <Words x={x + 24} y={y(i) + 21}>yours to say; everything below rests on it</Words>}
          </g>
        ))}
      </Sheet>
    )
  },
  table: (data, system) => ({
    head: ['Decision', 'Links', 'Worst', 'A mend reaches back to'],
    rows: data.map((s, i) => [`${i + 1} ${decisions[i]!.name}`, counted(s) || 'none', s.worst ? told(s.worst, system) : '–', s.reaches.map((to) => to + 1).join(', ') || '–']),
  }),
})
