import { area, line } from 'd3-shape'
import type { Frame } from './frame.ts'

/** A place in a drawing, in the units shown. */
export type Spot = readonly [x: number, y: number]
/** A line with its name in the key; the class says how it is drawn: `line`, `line two`, `line dash`, `thin`. */
export type Named = { readonly name: string; readonly class: string; readonly spots: readonly Spot[] }

const path = (on: Frame) => line<Spot>().x(([x]) => on.x.at(x)).y(([, y]) => on.y.at(y)).digits(1)

export function Lines({ on, of }: { on: Frame; of: readonly Named[] }) {
  return <>{of.map((l) => <path key={l.name} class={l.class} vector-effect="non-scaling-stroke" d={path(on)(l.spots) ?? ''} />)}</>
}

/** The space between two lines over the same x. */
export function Band({ on, low, high, class: c = 'area' }: { on: Frame; low: readonly Spot[]; high: readonly Spot[]; class?: string }) {
  const d = area<number>().x((i) => on.x.at(low[i]![0])).y0((i) => on.y.at(low[i]![1])).y1((i) => on.y.at(high[i]![1])).digits(1)(low.map((_, i) => i))
  return <path class={c} d={d ?? ''} />
}

/** What each line stands for, in words below the drawing. */
export function Key({ of }: { of: readonly Pick<Named, 'name' | 'class'>[] }) {
  return <div class="chart"><p class="small key">{of.map(({ name, class: c }) => <span key={name}><svg viewBox="0 0 28 8" aria-hidden="true"><line class={c} x1="0" x2="28" y1="4" y2="4" /></svg> {name}</span>)}</p></div>
}
