import type { ComponentChildren } from 'preact'
import { frame, type Frame } from './frame.ts'
import { Lines, type Named, type Spot } from './Lines.tsx'
import { Axes, Sheet, Words } from './Sheet.tsx'

type Mark = { readonly at: Spot; readonly says?: string; /** Where its words go, from the mark. */ readonly to?: 'left' | 'right' | 'above' | 'below' | 'under' }
type Props = {
  says: string
  x: string
  y: string
  lines: readonly Named[]
  /** Drawn paler beneath: limits and levels. */
  levels?: readonly Named[]
  marks?: readonly Mark[]
  /** Upright lines at a value of x, named at their foot, or at the top where the foot is taken. */
  uprights?: readonly { readonly at: number; readonly says: string; readonly top?: true }[]
  /** Values that y must reach; zero brings the foot of the paper down to nothing. */
  reach?: readonly number[]
  height?: number
  /** What lies under the lines, such as a band. */
  under?: (on: Frame) => ComponentChildren
}

const place = { left: [-11, 5, 'end'], right: [11, 5, 'start'], above: [0, -13, 'middle'], below: [0, 25, 'middle'], under: [9, 24, 'start'] } as const

/** Lines over one axis with marks, uprights and a key: what most figures are. Everything in the units shown. */
export function Curves({ says, x, y, lines, levels = [], marks = [], uprights = [], reach = [], height, under }: Props) {
  const all = [...lines, ...levels].flatMap(({ spots }) => spots)
  const xs = all.map(([at]) => at), ys = [...all.map(([, at]) => at), ...marks.map(({ at }) => at[1]), ...reach]
  const on = frame({ x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)], ...(height && { height }) })
  return (
    <Sheet says={says} height={on.height} named={[...lines, ...levels]}>
      {under?.(on)}
      <Axes on={on} x={x} y={y} />
      {uprights.map(({ at, says: name }) => <line key={name} class="cross" x1={on.x.at(at)} x2={on.x.at(at)} y1={on.top} y2={on.bottom} />)}
      <g opacity=".7"><Lines on={on} of={levels} /></g>
      <Lines on={on} of={lines} />
      {marks.map(({ at: [mx, my] }, i) => <circle key={i} class="mark" r="6" cx={on.x.at(mx)} cy={on.y.at(my)} />)}
      {marks.map(({ at: [mx, my], says: words, to }, i) => {
        const [dx, dy, anchor] = place[to ?? (on.x.at(mx) > 400 ? 'left' : 'right')]
        return words && <Words key={i} x={on.x.at(mx) + dx} y={on.y.at(my) + dy} anchor={anchor}>{words}</Words>
      })}
      {uprights.map(({ at, says: name, top }) => <Words key={name} x={on.x.at(at) + (on.x.at(at) > 400 ? -7 : 7)} y={top ? on.top + 16 : on.bottom - 10} anchor={on.x.at(at) > 400 ? 'end' : 'start'}>{name}</Words>)}
    </Sheet>
  )
}

/** A level line from end to end of the x shown; none where there is no value. */
export const level = (name: string, c: string, [from, to]: readonly [number, number], value: number | null): Named[] =>
  value === null ? [] : [{ name, class: c, spots: [[from, value], [to, value]] }]

/** So many values evenly spaced from one end to the other, both included. */
export const steps = (from: number, to: number, count: number): number[] => Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)
