import { useRef, useState } from 'preact/hooks'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import type { Opened } from '../../state/drives/tasks.ts'
import { pathOf } from '../chart/path.ts'
import { scale } from '../chart/scale.ts'

const width = 640, height = 220, left = 10, right = 10, top = 14, bottom = 34
type Props = { trace: Opened['trace']; seconds: number; from: number; to: number; onChange: (from: number, to: number) => void }

/** Shaft speed and manifold pressure over the whole log, with the pull marked: drag over it, or move its ends with the sliders. */
export function Trace({ trace, seconds, from, to, onChange }: Props) {
  const [drawn, setDrawn] = useState<number | null>(null)
  const svg = useRef<SVGSVGElement>(null)
  const sx = scale([0, seconds], [left, width - right], 8)
  const line = (values: readonly (number | null)[]): string => {
    const known = values.filter((v): v is number => v !== null)
    if (known.length === 0) return ''
    const low = Math.min(...known), high = Math.max(...known)
    return pathOf(values.map((v, i) => (v === null ? null : [sx.at(trace.t[i]!), height - bottom - ((v - low) / (high - low || 1)) * (height - top - bottom)])))
  }
  const at = (e: PointerEvent): number => {
    const box = svg.current!.getBoundingClientRect()
    return Math.min(seconds, Math.max(0, sx.back(((e.clientX - box.left) / box.width) * width)))
  }
  const step = Math.max(0.01, seconds / 2000)
  return (
    <div class="chart">
      <svg ref={svg} viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby="trace-title"
        onPointerDown={(e) => { setDrawn(at(e)); e.currentTarget.setPointerCapture(e.pointerId) }}
        onPointerMove={(e) => { if (drawn !== null) { const t = at(e); if (Math.abs(t - drawn) > step * 4) onChange(Math.min(drawn, t), Math.max(drawn, t)) } }}
        onPointerUp={() => setDrawn(null)} onPointerCancel={() => setDrawn(null)}>
        <title id="trace-title">{`Shaft speed and manifold pressure over the log; the pull from ${writeNumber(from, 4)} to ${writeNumber(to, 4)} s is marked`}</title>
        <rect class="area" x={sx.at(from)} width={Math.max(1, sx.at(to) - sx.at(from))} y={top} height={height - top - bottom} />
        <path class="line" d={line(trace.speed)} />
        <path class="line two" d={line(trace.manifold)} />
        {sx.ticks.map((t) => <text key={t} x={sx.at(t)} y={height - 12} text-anchor="middle">{writeNumber(t, 4)}</text>)}
        <text class="strong" x={width - right} y={height - 1} text-anchor="end">s</text>
      </svg>
      <p class="small key"><span><svg viewBox="0 0 28 8" aria-hidden="true"><line class="line" x1="0" x2="28" y1="4" y2="4" /></svg> Shaft speed</span><span><svg viewBox="0 0 28 8" aria-hidden="true"><line class="line two" x1="0" x2="28" y1="4" y2="4" /></svg> Manifold pressure</span></p>
      <div class="two no-print">
        <label class="small">Pull begins at {writeNumber(from, 4)} s <input type="range" min={0} max={seconds} step={step} value={from} onInput={(e) => onChange(Math.min(Number(e.currentTarget.value), to - step), to)} /></label>
        <label class="small">Pull ends at {writeNumber(to, 4)} s <input type="range" min={0} max={seconds} step={step} value={to} onInput={(e) => onChange(from, Math.max(Number(e.currentTarget.value), from + step))} /></label>
      </div>
    </div>
  )
}
