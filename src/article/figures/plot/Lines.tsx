import { area, line } from 'd3-shape'
import type { Frame } from './frame.ts'

/** A place in a drawing, in the units shown. */
export type Spot = readonly [x: number, y: number]
/** A line with its name in the key; the class says how it is drawn: `line`, `line two`, `line dash`, `thin`. What colour tells on a screen, `dash` tells on paper. */
export type Named = { readonly name: string; readonly class: string; readonly dash?: string | undefined; readonly spots: readonly Spot[] }
/** Strokes of a line that would else differ from another by its colour alone. */
export const long = '14 4'

const path = (on: Frame) => line<Spot>().x(([x]) => on.x.at(x)).y(([, y]) => on.y.at(y)).digits(1)

export function Lines({ on, of }: { on: Frame; of: readonly Named[] }) {
  return <>{of.map((l) => <path key={l.name} class={l.class} stroke-dasharray={l.dash} vector-effect="non-scaling-stroke" d={path(on)(l.spots) ?? ''} />)}</>
}

/** The line that a drawing is about, heavy over all others. */
export const Bold = ({ on, of, dash }: { on: Frame; of: readonly Spot[]; dash?: boolean }) =>
  <path d={path(on)(of) ?? ''} fill="none" stroke="var(--accent)" stroke-width="3.4" stroke-linejoin="round" {...(dash && { 'stroke-dasharray': '6 5' })} />

/** The space between two lines over the same x. */
export function Band({ on, low, high, class: c = 'area' }: { on: Frame; low: readonly Spot[]; high: readonly Spot[]; class?: string }) {
  const d = area<number>().x((i) => on.x.at(low[i]![0])).y0((i) => on.y.at(low[i]![1])).y1((i) => on.y.at(high[i]![1])).digits(1)(low.map((_, i) => i))
  return <path class={c} d={d ?? ''} />
}

/** What each line stands for, in words below the drawing. */
export function Key({ of }: { of: readonly Pick<Named, 'name' | 'class' | 'dash'>[] }) {
  return <div class="chart"><p class="small key">{of.map(({ name, class: c, dash }) => <span key={name}><svg viewBox="0 0 28 8" aria-hidden="true"><line class={c} stroke-dasharray={dash} x1="0" x2="28" y1="4" y2="4" /></svg> {name}</span>)}</p></div>
}
