import { labelOf, numericInputs } from '@trochoid/compute/calculation/calculation.ts'
import { curveOver } from '@trochoid/compute/calculation/curve.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, shownUnit } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { Chart } from '../chart/Chart.tsx'
import { Choose } from '../parts/Choose.tsx'
import { useStore } from '../parts/useStore.ts'
import type { Model } from './model.ts'
import { outLabel, outQuantity } from './shapes.ts'

/** An answer drawn over any one given; the slider moves that given, and the old curve stays faint while another moves. */
export function CurveFold({ model, uid }: { model: Model; uid: string }) {
  const now = useStore(model.state)
  const { of, system } = now
  const [over, setOver] = useState(of.curve[0])
  const [shown, setShown] = useState(of.curve[1])
  const inputs = numericInputs(of).filter((name) => typeof now.values[name] === 'number')
  if (inputs.length === 0) return <p>There is nothing to draw over.</p>
  const name = inputs.includes(over) ? over : inputs[0]!
  const qx = of.in[name]!.shape as Quantity
  const qy = outQuantity(of, shown)
  const ux = shownUnit(qx, system)
  const uy = shownUnit(qy, system)
  const drawn = curveOver(of, now.values, name, shown)
  const old = now.before && curveOver(of, { ...now.before.values, [name]: now.values[name] }, name, shown)
  const inY = (y: number | null) => (y === null ? null : inUnit(y, qy, uy))
  const label = labelOf(of.in[name]!)
  return (
    <div>
      <div class="two">
        <Choose id={`${uid}-shown`} label="Draw" value={shown} options={Object.keys(of.out).map((o) => [o, outLabel(of, o)])} onChoose={setShown} />
        <Choose id={`${uid}-over`} label="over" value={name} options={inputs.map((i) => [i, labelOf(of.in[i]!)])} onChoose={setOver} />
      </div>
      <Chart id={`${uid}-chart`} title={`${outLabel(of, shown)} over ${label}`} summary={`${outLabel(of, shown)} over ${label}, everything else held; the upright line marks the present value.`}
        x={drawn.x.map((x) => inUnit(x, qx, ux))} xName={label} xUnit={ux} yUnit={uy} here={inUnit(now.values[name] as number, qx, ux)}
        series={[{ name: outLabel(of, shown), y: drawn.y.map(inY), old: old && old.y.length === drawn.y.length ? old.y.map(inY) : undefined }]} />
    </div>
  )
}
