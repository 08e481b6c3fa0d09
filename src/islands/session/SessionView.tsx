import { coolantTemperatureOf, boilMarginOf } from '@trochoid/compute/cooling/quantities.ts'
import type { Moment } from '@trochoid/compute/session/course.ts'
import type { SessionResult, Summary } from '@trochoid/compute/session/session.ts'
import { inUnit, shownUnit, write, writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { Chart } from '../chart/Chart.tsx'
import { minutes } from '../parts/minutes.ts'

type Props = { result: SessionResult; from100to200: number | null; system: System }

/** A session as it went: what it means in a sentence, the course, the laps, what another cooler buys, and the stop. */
export function SessionView({ result, from100to200, system }: Props) {
  const { summary, limits, lap, moments, stop, bought, energy } = result
  const unit = shownUnit(coolantTemperatureOf, system)
  const hot = (si: number): string => write(si, coolantTemperatureOf, unit)
  const differenceUnit = shownUnit(boilMarginOf, system)
  const less = (si: number): string => Math.abs(si) < 0.1 ? 'no change' : `${si > 0 ? '−' : '+'}${write(Math.abs(si), boilMarginOf, differenceUnit, 2)}`
  const parts = [
    ['Coolant', summary.coolant, limits.coolant, summary.passed.coolant], ['Oil to the bearings', summary.oil, limits.oil, summary.passed.oil], ['Charge at full throttle', summary.charge, limits.charge, summary.passed.charge],
  ] as const
  return (
    <>
      <p class="answer">{verdict(result, hot)}</p>
      <div class="scroll" tabindex={0} role="group" aria-label="Highest temperatures">
        <table>
          <thead><tr><th scope="col">What</th><th class="n" scope="col">Highest</th><th class="n" scope="col">You accept</th><th class="n" scope="col">Passed after</th></tr></thead>
          <tbody>
            {parts.map(([name, most, limit, passed]) => <tr key={name}><th scope="row">{name}</th><td class="n">{hot(most)}</td><td class="n">{hot(limit)}</td><td class="n">{passed === undefined ? 'not passed' : `${minutes(passed)} min`}</td></tr>)}
            <tr><th scope="row">Bulk of the coolant boils</th><td class="n">{hot(summary.coolant)}</td><td class="n">{hot(limits.boiling)}</td><td class="n">{summary.boils === null ? 'not reached' : `${minutes(summary.boils)} min`}</td></tr>
            <tr><th scope="row">Mean of the metal</th><td class="n">{hot(summary.metal)}</td><td class="n">none stated</td><td class="n"></td></tr>
          </tbody>
        </table>
      </div>
      <Temperatures id="session" title="Temperatures over the session" moments={thin(moments)} unit={unit} summary="Coolant, oil to the bearings, mean metal, and the charge that full throttle would find, over the minutes of the session." parts={['coolant', 'bearings', 'metal', 'charge']} />
      <p class="small">{lap.name}: a lap of {writeNumber(lap.length / 1000, 3)} km in {minutes(lap.seconds)} min, {writeNumber(lap.load * 100, 2)} % of full load on average over its shaft turns.{from100to200 !== null && ` From 100 to 200 km/h the car takes ${writeNumber(from100to200, 2)} s, shifts not counted.`} {laps(result)}</p>

      <h2 id="another-cooler">What one more cooler buys</h2>
      <div class="scroll" tabindex={0} role="group" aria-label="What one more cooler buys">
        <table>
          <thead><tr><th scope="col">Change</th><th class="n" scope="col">Coolant</th><th class="n" scope="col">Oil</th><th scope="col">Laps before a limit</th></tr></thead>
          <tbody>{bought.map((b) => <tr key={b.id}><th scope="row">{b.says}</th><td class="n">{less(summary.coolant - b.summary.coolant)}</td><td class="n">{less(summary.oil - b.summary.oil)}</td><td>{lapsOf(b.summary)}</td></tr>)}</tbody>
        </table>
      </div>

      <h2 id="stop">Shut down hot at the end, without flow</h2>
      <p>{stopWords(result, hot)}</p>
      <Temperatures id="stop" title="After the stop" moments={thin(stop.moments)} unit={unit} summary="Coolant, mean metal and fuel rail over an hour after the engine stops, with neither pump nor fan." parts={['coolant', 'metal', 'rail']} />
      <p class="small soft">Heat put in {writeNumber(energy.in / 1e6, 4)} MJ, carried off {writeNumber(energy.out / 1e6, 4)} MJ, stored {writeNumber(energy.stored / 1e6, 3)} MJ, each added up by itself: they close within {energy.open * 100 < 0.001 && energy.open * 100 > -0.001 ? 'a thousandth of one per cent' : `${writeNumber(Math.abs(energy.open) * 100, 2)} %`}.</p>
    </>
  )
}

const names = { coolant: 'Coolant', bearings: 'Oil', metal: 'Metal', charge: 'Charge', rail: 'Fuel rail' } as const
function Temperatures({ id, title, moments, unit, summary, parts }: { id: string; title: string; moments: readonly Moment[]; unit: string; summary: string; parts: readonly (keyof typeof names)[] }) {
  const series = parts.map((part) => ({ name: names[part], y: moments.map((m) => inUnit(m[part], coolantTemperatureOf, unit)) }))
  return <Chart id={`c-${id}`} title={title} summary={summary} x={moments.map((m) => m.t / 60)} xName="Time" xUnit="min" yUnit={unit} series={series} every={12} />
}
/** Few enough points for a chart; the first and the last stay. */
function thin(moments: readonly Moment[]): readonly Moment[] {
  const step = Math.max(1, Math.ceil(moments.length / 150))
  return moments.filter((_, i) => i % step === 0 || i === moments.length - 1)
}

function verdict({ summary, lap }: SessionResult, hot: (si: number) => string): string {
  if (summary.boils !== null) return `The coolant boils after ${minutes(summary.boils)} minutes, in lap ${Math.floor(summary.boils / lap.seconds) + 1}. From there the model has nothing to say: the session ends.`
  const said = { coolant: 'coolant', oil: 'oil', charge: 'charge' } as const
  const first = (Object.entries(summary.passed) as [keyof typeof said, number][]).sort((a, b) => a[1] - b[1])[0]
  return first
    ? `The ${said[first[0]]} passes its limit first, after ${minutes(first[1])} minutes: ${lapsOf(summary)} before it.`
    : `All limits hold in this model: coolant to ${hot(summary.coolant)}, oil to ${hot(summary.oil)}, charge to ${hot(summary.charge)}.`
}
const lapsOf = ({ laps }: Summary): string => (laps === null ? 'all of them' : laps === 0 ? 'not one whole lap' : `${laps} whole lap${laps === 1 ? '' : 's'}`)
const laps = ({ coolingLaps }: SessionResult): string =>
  coolingLaps === null ? '' : coolingLaps === Infinity ? 'A dozen cooling laps do not bring coolant and oil clear of their limits again.' : `${coolingLaps === 1 ? 'One cooling lap brings' : `${coolingLaps} cooling laps bring`} coolant and oil clear of their limits again.`

function stopWords({ stop, limits }: SessionResult, hot: (si: number) => string): string {
  const coolant = stop.boils === null
    ? `The coolant rises to ${hot(stop.coolant)}; it boils at ${hot(limits.boiling)}.`
    : `The coolant boils ${minutes(stop.boils)} minutes after the stop, and up to ${writeNumber(stop.boiled, 2)} kg leaves as vapour. Drive a cooling lap first, or let pump and fan run on.`
  const rail = stop.fuelBoils === null
    ? `The rail rises to ${hot(stop.rail)}. Whether its fuel boils waits for the rail pressure left after a hot stop.`
    : stop.vapourAfter === null ? `The rail rises to ${hot(stop.rail)}; its fuel boils at ${hot(stop.fuelBoils)} under the held pressure.` : `Vapour forms in the rail ${minutes(stop.vapourAfter)} minutes after the stop, at ${hot(stop.fuelBoils)}.`
  return `${coolant} ${rail}`
}
