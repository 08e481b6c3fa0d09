import type { Point } from '@trochoid/compute/build/point.ts'
import { inUnit, shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import type { Store } from '../../state/store.ts'
import { system as systemStore } from '../../state/system.ts'
import type { View } from '../../state/view.ts'
import { Chart, type Series } from '../chart/Chart.tsx'
import { Choose } from '../parts/Choose.tsx'
import { csv, saveFile } from '../parts/files.ts'
import { useStore } from '../parts/useStore.ts'
import { charts, quantityOf, type Told } from './values.ts'

const rpm = (speed: number): number => (speed * 30) / Math.PI

/** The coupled model over shaft speed. */
export function Sweep({ view, values, themes }: { view: Store<View>; values: readonly Told[]; themes: Readonly<Record<string, string>> }) {
  const now = useStore(view)
  const system = useStore(systemStore)
  const [theme, setTheme] = useState('')
  const [own, setOwn] = useState('boost.boost')
  const known = new Map(values.map((v) => [v[0], v]))
  const points = now.solved.points
  if (points.length === 0) return <p role="status">The sweep waits for: {(now.solved.missing['boost.thresholdSpeed'] ?? []).map((path) => now.fields.get(path)?.label ?? now.fields.get(path)?.shape.name ?? path).join(', ')}.</p>
  const shown = charts.filter((c) => theme === '' || c.theme === theme)
  const one = known.get(own)
  return (
    <>
      <div class="row no-print">
        <Choose id="theme" label="Show" value={theme} options={[['', 'every discipline'], ...[...new Set(charts.map((c) => c.theme))].map((t) => [t, themes[t] ?? t] as const)]} onChoose={setTheme} />
        <button type="button" onClick={() => saveFile('sweep.csv', 'text/csv', table(points, values, system))}>Save all values as CSV</button>
        <button type="button" onClick={() => print()}>Print</button>
      </div>
      <Gaps points={points} />
      {shown.map((c) => {
        const told = c.paths.flatMap((path) => { const v = known.get(path); return v ? [v] : [] })
        return told.length > 0 && <section key={c.id}><h2 id={c.id}>{c.title}</h2><Over id={c.id} title={c.title} told={told} band={c.band} points={points} system={system} /></section>
      })}
      <section>
        <h2 id="any">Any other value</h2>
        <Choose id="any-value" label="Value of the solved point" value={own} options={values.map(([path, name]) => [path, name])} onChoose={setOwn} />
        {one && <Over id="any-chart" title={one[1]} told={[one]} points={points} system={system} />}
      </section>
    </>
  )
}

function Over({ id, title, told, band, points, system }: { id: string; title: string; told: readonly Told[]; band?: readonly [string, string] | undefined; points: readonly Point[]; system: System }) {
  const unit = shownUnit(quantityOf(told[0]!), system)
  const line = (path: string, of: Told) => points.map((p) => { const v = p.values[path]; return v === undefined ? null : inUnit(v, quantityOf(of), unit) })
  const series: Series[] = told.map((v, i) => ({ name: v[1], y: line(v[0], v), ...(i === 0 && band && { band: [line(band[0], v), line(band[1], v)] as const }) }))
  if (series.every((s) => s.y.every((y) => y === null))) return <p>This build has no such value: {[...new Set(points.flatMap((p) => p.missing[told[0]![0]] ?? []))].join(', ') || 'the model makes none at full throttle'}.</p>
  return <Chart id={`s-${id}`} title={`${title} over shaft speed`} summary={`${title} at full throttle over shaft speed${band ? '; the shaded band is what the model cannot tell closer' : ''}.`} x={points.map((p) => rpm(p.speed))} xName="Shaft speed" xUnit="rpm" yUnit={unit} series={series} every={3} />
}

/** Speeds without a solution, and why: they stay gaps in every chart. */
function Gaps({ points }: { points: readonly Point[] }) {
  const gaps = points.filter((p) => p.failed['engine.power'])
  if (gaps.length === 0) return null
  return (
    <div role="status">
      <p><strong>{gaps.length === 1 ? 'One speed has' : `${gaps.length} speeds have`} no solution</strong> and stay{gaps.length === 1 ? 's' : ''} open in the charts:</p>
      <ul class="small">{gaps.slice(0, 6).map((p) => <li key={p.speed}>{p.failed['engine.power']!.says}</li>)}{gaps.length > 6 && <li>and so on to {Math.round(rpm(gaps.at(-1)!.speed))} rpm.</li>}</ul>
    </div>
  )
}

function table(points: readonly Point[], values: readonly Told[], system: System): string {
  const made = values.filter(([path]) => points.some((p) => p.values[path] !== undefined))
  return csv([
    made.map((v) => { const u = shownUnit(quantityOf(v), system); return `${v[1]}${u === '1' ? '' : `, ${u}`}` }),
    ...points.map((p) => made.map((v) => { const si = p.values[v[0]]; return si === undefined ? '' : String(Number(inUnit(si, quantityOf(v), shownUnit(quantityOf(v), system)).toPrecision(6))) })),
  ])
}
