import { extent } from 'd3-array'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useState } from 'preact/hooks'
import { short } from '../working/value.ts'
import { bandOf, pathOf } from './path.ts'
import { scale } from './scale.ts'

/** One line of a chart, in the units shown; null is a gap. `old` stays faint while something moves. */
export type Series = { readonly name: string; readonly y: readonly (number | null)[]; readonly old?: readonly (number | null)[] | undefined; readonly class?: string; readonly band?: readonly [readonly (number | null)[], readonly (number | null)[]] }
type Props = {
  id: string
  title: string
  /** What it shows, in words. */
  summary: string
  x: readonly number[]
  xName: string
  xUnit: string
  yUnit: string
  series: readonly Series[]
  /** Where the build stands on x. */
  here?: number | undefined
  /** Every how many points the table tells. */
  every?: number
}

const width = 640, height = 380, left = 66, right = 14, top = 16, bottom = 52

/** A line chart, drawn the same when the page is built and in the browser, with a read-out for pointer and keyboard and a table of its data. */
export function Chart({ id, title, summary, x, xName, xUnit, yUnit, series, here, every = 4 }: Props) {
  const [picked, pick] = useState<number | null>(null)
  const [alive, live] = useState(false)
  useEffect(() => live(true), [])
  const all = series.flatMap((s) => [...s.y, ...(s.old ?? []), ...(s.band?.flat() ?? [])]).filter((v): v is number => v !== null && Number.isFinite(v))
  const [low = 0, high = 1] = extent(all)
  const sx = scale([x[0]!, x.at(-1)!], [left, width - right], 6)
  const sy = scale([low > 0 && low < high * 0.4 ? 0 : low, high], [height - bottom, top], 5, true)
  const path = (y: readonly (number | null)[]) => pathOf(x.map((value, i) => (y[i] == null ? null : [sx.at(value), sy.at(y[i])])))
  const band = (between: readonly [readonly (number | null)[], readonly (number | null)[]]) =>
    bandOf(x.map((value, i) => (between[0][i] == null || between[1][i] == null ? null : [sx.at(value), sy.at(between[0][i]), sy.at(between[1][i])])))
  const index = picked ?? nearest(x, here)
  const unit = (u: string) => (u === '1' ? '' : `\u202f${u}`)
  const told = index === null ? '' : `At ${short(writeNumber(x[index]!, 4))}${unit(xUnit)}: ${series.map((s) => `${series.length > 1 ? `${s.name} ` : ''}${s.y[index] == null ? 'no answer' : `${writeNumber(s.y[index], 3)}${unit(yUnit)}`}`).join(', ')}`
  const gaps = series.some((s) => s.y.some((v) => v === null))

  return (
    <div class="chart">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={`${id}-title ${id}-summary`}
        onPointerMove={(e) => {
          const box = e.currentTarget.getBoundingClientRect()
          pick(nearest(x, sx.back(((e.clientX - box.left) / box.width) * width)))
        }}>
        <title id={`${id}-title`}>{title}</title>
        {sy.ticks.map((t) => <g key={t}><line class="grid" x1={left} x2={width - right} y1={sy.at(t)} y2={sy.at(t)} /><text x={left - 8} y={sy.at(t) + 4} text-anchor="end">{short(writeNumber(t, 5))}</text></g>)}
        {sx.ticks.map((t) => <g key={t}><line class="axis" x1={sx.at(t)} x2={sx.at(t)} y1={height - bottom} y2={height - bottom + 5} /><text x={sx.at(t)} y={height - bottom + 22} text-anchor="middle">{short(writeNumber(t, 5))}</text></g>)}
        <line class="axis" x1={left} x2={width - right} y1={height - bottom} y2={height - bottom} />
        <text class="strong" x={width - right} y={height - 8} text-anchor="end">{xName}{xUnit === '1' ? '' : `, ${xUnit}`}</text>
        <text class="strong" x={left} y={top - 4}>{yUnit === '1' ? '' : yUnit}</text>
        {series.map((s) => s.band && <path key={`band ${s.name}`} class="area" d={band(s.band)} />)}
        {series.map((s) => s.old && <path key={`old ${s.name}`} class="old" d={path(s.old)} />)}
        {series.map((s, i) => <path key={s.name} class={`line ${s.class ?? (i === 1 ? 'two' : i === 2 ? 'dash' : i === 3 ? 'two dash' : '')}`} d={path(s.y)} />)}
        {index !== null && <line class="cross" x1={sx.at(x[index]!)} x2={sx.at(x[index]!)} y1={top} y2={height - bottom} />}
        {index !== null && series.map((s) => s.y[index] != null && <circle key={s.name} class="mark" r="5" cx={sx.at(x[index]!)} cy={sy.at(s.y[index])} />)}
      </svg>
      <p id={`${id}-summary`} class="small soft">{summary}{gaps ? ' Where the line is broken there is no answer.' : ''}</p>
      {series.length > 1 && <p class="small key">{series.map((s, i) => <span key={s.name}><svg viewBox="0 0 28 8" aria-hidden="true"><line class={`line ${s.class ?? (i === 1 ? 'two' : i === 2 ? 'dash' : i === 3 ? 'two dash' : '')}`} x1="0" x2="28" y1="4" y2="4" /></svg> {s.name}</span>)}</p>}
      <p class="readout">{told}</p>
      <label class="small no-print">Read the curve at <input type="range" min={0} max={x.length - 1} value={index ?? 0} disabled={!alive} aria-valuetext={told} onInput={(e) => pick(Number(e.currentTarget.value))} /></label>
      <details>
        <summary class="small">Table of the data</summary>
        <div class="scroll" tabindex={0} role="group" aria-label={`Data of ${title}`}>
          <table>
            <thead><tr><th class="n" scope="col">{xName}{xUnit === '1' ? '' : `, ${xUnit}`}</th>{series.map((s) => <th class="n" scope="col" key={s.name}>{s.name}{yUnit === '1' ? '' : `, ${yUnit}`}</th>)}</tr></thead>
            <tbody>{x.map((value, i) => i % every === 0 && <tr key={i}><th class="n" scope="row">{writeNumber(value, 4)}</th>{series.map((s) => <td class="n" key={s.name}>{s.y[i] == null ? 'none' : writeNumber(s.y[i], 4)}</td>)}</tr>)}</tbody>
          </table>
        </div>
      </details>
    </div>
  )
}

function nearest(x: readonly number[], value: number | undefined): number | null {
  if (value === undefined || !Number.isFinite(value)) return null
  let best = 0
  for (let i = 1; i < x.length; i++) if (Math.abs(x[i]! - value) < Math.abs(x[best]! - value)) best = i
  return best
}
