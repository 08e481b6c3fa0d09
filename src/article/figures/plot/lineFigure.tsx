import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build, type Figure } from '../figure.ts'
import { frame } from './frame.ts'
import { Lines, long, type Named, type Spot } from './Lines.tsx'
import { Axes, Sheet, Words } from './Sheet.tsx'
import { shown } from './shown.ts'

/** One value over another for one or more cases, SI; nothing where a case has no answer. */
export type Drawn = {
  readonly x: readonly number[]
  readonly lines: readonly { readonly name: string; readonly y: readonly (number | null)[] }[]
  /** Values of y that are spoken of, as lines across, their words at the right end or the left. */
  readonly levels?: readonly { readonly says: string; readonly at: number; readonly left?: true }[]
  /** Places that are spoken of, their words above the line or below it. */
  readonly marks?: readonly { readonly says: string; readonly x: number; readonly y: number; readonly below?: true }[]
  /** Values of x that are spoken of, as upright lines. */
  readonly uprights?: readonly { readonly says: string; readonly at: number }[]
}
type Wish<D extends Drawn> = Pick<Figure<D>, 'beside'> & {
  readonly title: string
  readonly says: string
  readonly x: Quantity
  readonly y: Quantity
  /** What the axes are called, where a quantity's own name says too little. */
  readonly named?: { readonly x?: string; readonly y?: string }
  readonly log?: true
  /** The y axis begins at the lowest value drawn, not at nothing: for small differences between large numbers. */
  readonly zoom?: true
  readonly from: (build: Build) => D | null
  readonly summary: (data: D, system: System) => string
  /** Said where there is nothing to draw. */
  readonly without: string
}

const looks = [{ class: 'line' }, { class: 'line two', dash: long }, { class: 'line dash' }, { class: 'thin' }, { class: 'line two', dash: '2 4' }] as const

/** A figure of lines over one axis: most figures of a text are this. */
export function lineFigure<D extends Drawn>({ title, says, x, y, named = {}, log, zoom, beside, from, summary, without }: Wish<D>): Figure<D | null> {
  return figure<D | null>({
    title,
    ...(beside && { beside }),
    from: (build) => {
      const data = from(build)
      return data && data.lines.some((l) => l.y.filter((v) => v !== null).length > 1) ? data : null
    },
    summary: (data, system) => (data ? summary(data, system) : without),
    Picture({ data, system }) {
      if (!data) return null
      const over = shown(x, system), up = shown(y, system)
      const all = [...data.lines.flatMap((l) => l.y.filter((v) => v !== null)), ...(data.levels ?? []).map((l) => l.at), ...(data.marks ?? []).map((m) => m.y)].map(up.of)
      const low = Math.min(...all), high = Math.max(...all)
      const on = frame({ x: [over.of(data.x[0]!), over.of(data.x.at(-1)!)], y: log ? [low * 0.9, high * 1.1] : [zoom ? low : Math.min(0, low), high], height: 370, ...(log && { log }) })
      const lines: Named[] = data.lines.map((l, i) => ({ name: l.name, ...looks[i % looks.length]!, spots: l.y.flatMap((v, j): Spot[] => (v === null ? [] : [[over.of(data.x[j]!), up.of(v)]])) }))
      return (
        <Sheet says={says} height={on.height} named={lines}>
          <Axes on={on} x={over.head(named.x)} y={up.head(named.y)} />
          {data.levels?.map(({ says: word, at, left }) => <g key={word}><line class="cross" x1={on.left} x2={on.right} y1={on.y.at(up.of(at))} y2={on.y.at(up.of(at))} /><Words x={left ? on.left + 6 : on.right} y={on.y.at(up.of(at)) - 6} anchor={left ? 'start' : 'end'}>{word}</Words></g>)}
          {data.uprights?.map(({ says: word, at }, i) => <g key={word}><line class="cross" x1={on.x.at(over.of(at))} x2={on.x.at(over.of(at))} y1={on.top} y2={on.bottom} /><Words x={on.x.at(over.of(at)) + (past(at, data.x) ? -6 : 6)} y={on.top + 18 + 24 * i} anchor={past(at, data.x) ? 'end' : 'start'}>{word}</Words></g>)}
          <Lines on={on} of={lines} />
          {data.marks?.map((m) => <g key={m.says}><circle class="mark" r="6" cx={on.x.at(over.of(m.x))} cy={on.y.at(up.of(m.y))} /><Words x={on.x.at(over.of(m.x)) + (past(m.x, data.x) ? -10 : 10)} y={on.y.at(up.of(m.y)) + (m.below ? 26 : -10)} anchor={past(m.x, data.x) ? 'end' : 'start'}>{m.says}</Words></g>)}
        </Sheet>
      )
    },
    table(data, system) {
      const over = shown(x, system), up = shown(y, system)
      const every = Math.max(1, Math.ceil((data?.x.length ?? 0) / 9))
      return {
        head: [over.head(named.x), ...(data?.lines ?? []).map((l) => up.head(l.name))],
        rows: (data?.x ?? []).flatMap((at, i) => (i % every === 0 ? [[writeNumber(over.of(at)), ...data!.lines.map(({ y: value }) => (value[i] == null ? 'none' : writeNumber(up.of(value[i])))) ]] : [])),
      }
    },
  })
}

/** Whether a place lies in the right part of the drawing, where words have to stand on its left. */
const past = (at: number, x: readonly number[]): boolean => at > x[0]! + 0.6 * (x.at(-1)! - x[0]!)
