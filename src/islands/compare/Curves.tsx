import type { Side } from '@trochoid/compute/comparison/side.ts'
import { sharedSpeeds, valueAtSpeed } from '@trochoid/compute/comparison/traits.ts'
import { inUnit, shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { Chart } from '../chart/Chart.tsx'
import { Choose } from '../parts/Choose.tsx'
import { quantityOf, type Told } from '../sweep/values.ts'

type Props = { a: Side; b: Side; names: readonly [string, string]; values: readonly Told[]; system: System }
/** What a driver feels of two builds, and what decides it. */
const always = ['engine.torque', 'boost.boost']

/** Values of both sweeps over shaft speed, each pair in one chart. */
export function Curves({ a, b, names, values, system }: Props) {
  const [own, setOwn] = useState('engine.backPressureRatio')
  const speeds = sharedSpeeds(a.solved.points, b.solved.points)
  if (speeds.length < 2) return <p>Neither build has a sweep to draw.</p>
  const chart = (path: string) => {
    const told = values.find((v) => v[0] === path)
    if (!told) return null
    const quantity = quantityOf(told)
    const unit = shownUnit(quantity, system)
    const line = (side: Side) => speeds.map((speed) => { const v = valueAtSpeed(side.solved.points, path, speed); return v === null ? null : inUnit(v, quantity, unit) })
    const series = [{ name: names[0], y: line(a) }, { name: names[1], y: line(b), class: 'two dash' }]
    if (series.every((s) => s.y.every((y) => y === null))) return <p key={path}>Neither build has {told[1].toLowerCase()} at full throttle.</p>
    return <Chart key={path} id={`c-${path.replace('.', '-')}`} title={`${told[1]} of both builds`} summary={`${told[1]} of both at full throttle over shaft speed.`} x={speeds.map((s) => (s * 30) / Math.PI)} xName="Shaft speed" xUnit="rpm" yUnit={unit} series={series} every={3} />
  }
  return (
    <>
      {always.map((path) => <section key={path}><h3>{values.find((v) => v[0] === path)?.[1]}</h3>{chart(path)}</section>)}
      <h3>Any other value</h3>
      <Choose id="other-value" label="Value of the solved point" value={own} options={values.map(([path, name]) => [path, name])} onChoose={setOwn} />
      {chart(own)}
    </>
  )
}
