import { volumetricEfficiency } from '@trochoid/compute/engine/quantities.ts'
import { channels, type ChannelId } from '@trochoid/compute/log/channels.ts'
import type { LogCheck } from '@trochoid/compute/log/check.ts'
import { slow, type Laid } from '@trochoid/compute/log/compare.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, shownUnit, write, writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useState } from 'preact/hooks'
import { Chart } from '../chart/Chart.tsx'

type Props = { check: LogCheck; system: System; /** Name and value of a field, in the reader's units. */ told: (path: string, si: number) => { readonly name: string; readonly value: string } | null; onAdopt?: (() => void) | undefined }
const rpm = (speed: number): number => (speed * 30) / Math.PI
const percent = (share: number, figures = 2): string => `${writeNumber(share * 100, figures)}\u202f%`

/** What a pull says of the sheet: where it points first, then channel by channel, then fitted air and fuel. */
export function Findings({ check: { laid, ve, diagnosis }, system, told, onAdopt }: Props) {
  const { pointed } = diagnosis
  const drawn = useOneByOne(laid.length)
  return (
    <>
      <h2 id="points">What the difference points at</h2>
      {pointed.length === 0
        ? <p class="answer">{diagnosis.left === 'something' ? 'The log and the sheet differ by more than the sensors scatter, and none of the numbers tried explains it. Look at the channels below, and at the sensors first.' : 'Nothing: within the scatter of the sensors and what the model itself is trusted, the log is what the sheet says.'}</p>
        : <ol>{pointed.map((p) => {
            const was = told(p.suspect.path, p.sheet), now = told(p.suspect.path, p.log)
            const change = p.log / p.sheet - 1
            return (
              <li key={p.suspect.path}>
                <strong>{was?.name ?? p.suspect.says}</strong>: {was && now && p.suspect.path !== 'engine.veCurve' ? `the sheet says ${was.value}, the log ${now.value}` : `the whole curve ${change < 0 ? 'lower' : 'higher'} by ${percent(Math.abs(change))}`}, give or take {percent(p.error / Math.abs(p.sheet), 1)}.
                {p.alike.length > 0 && <> In this log it looks the same as {p.alike.map((a) => { const t = told(a.suspect.path, a.log); return t && a.suspect.path !== 'engine.veCurve' ? `${t.name.replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase())} of ${t.value}` : `air ${a.log < a.sheet ? 'lower' : 'higher'} by ${percent(Math.abs(a.log / a.sheet - 1))}` }).join(', or ')}: one of them, or some of each.</>}
                {' '}What settles it: {p.suspect.settle}{p.alike.map((a) => ` Or: ${a.suspect.settle}`)}
              </li>
            )
          })}</ol>}
      <p class="small soft">Boost and lambda as measured were put into the sheet first, so that what a tuner chose is not taken for a fault. Then each suspect was carried through the whole model: {writeNumber(diagnosis.before, 2)} times the expected scatter before, {writeNumber(diagnosis.after, 2)} after. Used: {diagnosis.used.map((id) => channels[id].quantity.name.toLowerCase()).join(', ')}.</p>

      <h2 id="laid">Measured over predicted</h2>
      <div class="scroll" tabindex={0} role="group" aria-label="Measured over predicted">
        <table>
          <thead><tr><th scope="col">Channel</th><th class="n" scope="col">Mean difference</th><th class="n" scope="col">Give or take</th><th scope="col">What it says</th></tr></thead>
          <tbody>{laid.map((l) => {
            const q = differenceOf(channels[l.channel].quantity), unit = shownUnit(q, system)
            return <tr key={l.channel}><th scope="row">{nameOf(l.channel)}</th><td class="n">{l.off ? `${l.off.mean < 0 ? '−' : '+'}${write(Math.abs(l.off.mean), q, unit, 2)}` : 'not predicted'}</td><td class="n">{l.off ? write(l.off.error, q, unit, 1) : ''}</td><td class="small">{(slow as readonly string[]).includes(l.channel) ? 'settles over minutes: a pull is too short for it' : ''}</td></tr>
          })}</tbody>
        </table>
      </div>
      {laid.slice(0, drawn).map((l) => <Over key={l.channel} laid={l} system={system} />)}

      <h2 id="air">Air and fuel, fitted</h2>
      {!ve.ok ? <p>{ve.says}</p> : (
        <>
          <p>The log’s fuel is {percent(ve.fuel.ratio, 4)} of the sheet’s, give or take {percent(ve.fuel.error, 1)} from scatter alone. Air follows from it and lambda, over {ve.rows} rows.</p>
          <Chart id="ve" title="Volumetric efficiency, sheet and log" summary="The sheet’s curve and what the log gives at the same speeds, with two standard errors shaded. Where the pull does not reach, nothing is fitted." x={ve.speeds.map(rpm)} xName="Shaft speed" xUnit="rpm" yUnit="%" every={1}
            series={[{ name: 'Sheet', y: ve.sheet.map((y) => y * 100) }, { name: 'Log', y: ve.fitted.map((y) => (y === null ? null : y * 100)), band: [ve.fitted.map((y, i) => (y === null ? null : (y - 2 * ve.error[i]!) * 100)), ve.fitted.map((y, i) => (y === null ? null : (y + 2 * ve.error[i]!) * 100))] }]} />
          <p class="small soft">Rests on the sheet’s injectors: 3 % in their flow is 3 % of {volumetricEfficiency.name.toLowerCase()}, in the same direction at every speed, and no scatter shows it. The log’s own back-pressure is in it and is carried to the sheet’s reference once.</p>
          {onAdopt && <p class="no-print"><button type="button" onClick={onAdopt}>Put the fitted curve in my build</button></p>}
        </>
      )}
    </>
  )
}

/** Counts up to a number, one at a time with a rest between: ten charts drawn at once would hold up the page. */
function useOneByOne(most: number): number {
  const [count, setCount] = useState(0)
  useEffect(() => {
    if (count >= most) return undefined
    const timer = setTimeout(() => setCount(count + 1))
    return () => clearTimeout(timer)
  }, [count, most])
  return Math.min(count, most)
}

const nameOf = (id: ChannelId): string => channels[id].quantity.name
function differenceOf(q: Quantity): Quantity {
  if (q.kind === 'temperature') return { ...q, kind: 'temperatureDifference', show: ['K', 'Δ°F'] }
  if (q.kind === 'gaugePressure') return { ...q, kind: 'pressureDifference', show: ['bar', 'psi'] }
  return q
}
function Over({ laid: { channel, bands }, system }: { laid: Laid; system: System }) {
  const q: Quantity = channels[channel].quantity
  const unit = shownUnit(q, system)
  const shown = (si: number | null): number | null => (si === null ? null : inUnit(si, q, unit))
  return <Chart id={`l-${channel}`} title={`${q.name}, measured and predicted`} summary={`${q.name} over shaft speed in the pull; the shaded band is one standard deviation of the samples.`} x={bands.map((b) => rpm(b.speed))} xName="Shaft speed" xUnit="rpm" yUnit={unit} every={1}
    series={[{ name: 'Measured', y: bands.map((b) => shown(b.measured)), band: [bands.map((b) => shown(b.measured - b.spread)), bands.map((b) => shown(b.measured + b.spread))] }, { name: 'Predicted', y: bands.map((b) => shown(b.predicted)) }]} />
}
