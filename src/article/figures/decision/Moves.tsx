import { leftWords, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import type { Table } from '../figure.ts'
import { Key } from '../plot/Lines.tsx'
import { round, Sheet, Words } from '../plot/Sheet.tsx'
import { inThresholds, type Moved } from './moved.ts'

const limit = 180, unit = 90, step = 62, top = 44
/** The longest title beside which both numbers fit. */
const longest = 36
/** Cut off two thresholds under the limit and five over it: beyond that, more or less changes nothing. */
const place = (w: Weighed): number => { const t = inThresholds(w); return round(limit + unit * Math.max(-1.9, Math.min(5, t ?? (w.state === 'short' ? -1.9 : 0)))) }
const left = (w: Weighed, system: System): string => (w.left === null ? stateWord(w) : leftWords(w, system))

/** Links before and after one decision is changed, each on a line of its own thresholds. */
export function Moves({ of, says, system }: { of: readonly Moved[]; says: string; system: System }) {
  const height = top + step * of.length
  return (
    <>
      <Sheet says={says} height={height}>
        <rect class="area" x={limit} y={top - 20} width={unit} height={height - top + 12} />
        <line class="line" x1={limit} x2={limit} y1={top - 20} y2={height - 8} />
        <Words x={limit - 8} y={14} anchor="end" strong>short</Words>
        <Words x={limit + unit / 2} y={14} anchor="middle" strong>tight</Words>
        <Words x={limit + unit + 8} y={14} strong>holds</Words>
        {of.map(({ before, after }, i) => {
          const y = top + i * step, from = place(before), to = place(after)
          const head = to === from ? 0 : Math.sign(to - from)
          return (
            <g key={after.id}>
              <Words x={2} y={y + 2}>{after.margin.title}</Words>
              <Words x={638} y={y + 2} anchor="end">{after.margin.title.length > longest ? '' : left(before, system)} → {left(after, system)}</Words>
              <line class="grid" x1="0" x2="638" y1={y + 20} y2={y + 20} />
              <line class="thin" x1={from + head * 6} x2={to} y1={y + 20} y2={y + 20} />
              <circle class="thin" cx={from} cy={y + 20} r="6" />
              <circle class={after.state === 'short' ? 'fill-bad' : after.state === 'tight' ? 'fill-warn' : 'fill'} cx={to} cy={y + 20} r="6" />
              {head !== 0 && Math.abs(to - from) > 24 && <path class="thin" d={`M${to - head * 15} ${y + 15}l${head * 7} 5l${-head * 7} 5`} />}
            </g>
          )
        })}
      </Sheet>
      <Key of={[{ name: 'Open ring: before. Filled: after. The upright line is the limit.', class: 'thin' }]} />
    </>
  )
}

export const movesTable = (of: readonly Moved[], system: System): Table => ({
  head: ['Link', 'Before', 'After'],
  rows: of.map(({ before, after }) => [after.margin.title, `${stateWord(before)}, ${left(before, system)}`, `${stateWord(after)}, ${left(after, system)}`]),
})

/** The changes of state, in words. */
export function turned(of: readonly Moved[]): string {
  const worse = of.filter(({ before, after }) => before.state !== after.state)
  return worse.length === 0 ? 'No link changes its state.' : `${worse.map(({ before, after }, i) => `${i === 0 ? after.margin.title : after.margin.title[0]!.toLowerCase() + after.margin.title.slice(1)} goes from ${stateWord(before)} to ${stateWord(after)}`).join('; ')}.`
}
