import { leftWords, stateWord, type Weighed } from '@trochoid/compute/build/margins.ts'
import { fromAt, valueAt, type From } from '@trochoid/compute/build/sheet.ts'
import { airFlow, lambda, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { pumpRatedFlow, pumpRatedPressure } from '@trochoid/compute/fuel/fields.ts'
import { fuelFlow, fuelVolumeFlow, pumpFlow, pumpPressure } from '@trochoid/compute/fuel/quantities.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Data = { left: Weighed; typed: string | null; from: From; rated: number; ratedAt: number; speed: number; air: number; lambda: number; fuel: number; asked: number; against: number; given: number } | null

function from({ sheet, solved, weighed }: Build): Data {
  const left = weighed.find(({ id }) => id === 'fuel-pump-flow')
  const point = solved.points.find(({ speed }) => speed === left?.speed)?.values ?? {}
  const rated = valueAt(sheet, pumpRatedFlow), ratedAt = valueAt(sheet, pumpRatedPressure)
  const found = { air: point['engine.airFlow'], lambda: point['engine.lambda'], fuel: point['fuel.massFlow'], asked: point['fuel.volumeFlow'], against: point['fuel.pumpPressure'], given: point['fuel.pumpFlow'] }
  if (!left || left.speed === null || rated === null || ratedAt === null || Object.values(found).some((value) => value === undefined)) return null
  return { left, typed: sheet.entries[pumpRatedFlow.path]?.typed || null, from: fromAt(sheet, pumpRatedFlow), rated, ratedAt, speed: left.speed, ...(found as Record<keyof typeof found, number>) }
}

const origin: Readonly<Record<From, string>> = { measured: 'measured', maker: 'a maker’s figure', common: 'common practice', guess: 'a guess' }

/** Both ways, station by station: what the build asks of the pump, and what the pump gives. */
function ways(d: NonNullable<Data>, system: System): readonly [asks: readonly (readonly [string, string])[], gives: readonly (readonly [string, string])[]] {
  const flow = shown(pumpFlow, system), against = shown(pumpPressure, system)
  return [
    [
      ['Asked. From the sheet', 'chamber, air, boost'],
      ['Air at the worst speed', shown(airFlow, system).say(d.air)],
      [`Fuel, lambda ${shown(lambda, system).say(d.lambda)}`, shown(fuelFlow, system).say(d.fuel)],
      ['Asked of the pump', shown(fuelVolumeFlow, system).say(d.asked)],
    ],
    [
      ['There is. From the sheet', d.typed ?? `${flow.say(d.rated)} at ${against.say(d.ratedAt).replace(/ gauge$/, '')}`],
      ['Kept inside as SI', `${(d.rated * 1e6).toPrecision(3)} × 10⁻⁶ m³/s`],
      ['Pressure at the pump', against.say(d.against)],
      ['Given by the pump', flow.say(d.given)],
    ],
  ]
}
const above = ({ left, tight }: Weighed): string => ((left ?? 0) >= tight ? 'more than' : 'less than')
const arrow = (x: number, y: number): string => `M${x} ${y}v22m-6 -9l6 10l6 -10`

export default figure<Data>({
  title: 'From two fields to one margin: the fuel pump of this build',
  from,
  summary(d, system) {
    if (!d) return 'The pump of this build cannot be weighed, because a number is missing or no full-throttle point is solved; the margins page says which.'
    const [asks, gives] = ways(d, system).map((way) => way.at(-1)![1])
    return `Left: what the engine burns, worked out from air. Right: what the pump gives, worked out from the number in its field, which is ${origin[d.from]}. Both are taken at ${shown(shaftSpeed, system).say(d.speed)}, where least is left: ${asks} asked, ${gives} given, ${leftWords(d.left, system)}. That is ${above(d.left)} the threshold of ${Math.round(d.left.tight * 100)}\u202f%, so the margin reads “${stateWord(d.left)}”.`
  },
  Picture({ data: d, system }) {
    if (!d) return null
    const [asks, gives] = ways(d, system)
    const step = 92, high = 64
    return (
      <Sheet says="Two rows of boxes, what is asked and what is given, that meet in one margin." height={step * 4 + high + 6}>
        {[asks, gives].map((way, side) => way.map(([label, value], i) => (
          <g key={label}>
            <rect class="thin" x={side * 330 + 1} y={i * step + 1} width="308" height={high} rx="3" />
            <text x={side * 330 + 12} y={i * step + 26}>{label}</text>
            <text class="strong" x={side * 330 + 12} y={i * step + 52}>{value}</text>
            <path class="line two" d={arrow(side * 330 + 154, i * step + high + 3)} />
          </g>
        )))}
        <rect class="thin" x="1" y={step * 4 + 1} width="638" height={high} rx="3" />
        <text x="12" y={step * 4 + 26}>Margin: given less asked, over asked</text>
        <text class="strong" x="12" y={step * 4 + 52}>{leftWords(d.left, system)}: {stateWord(d.left)}</text>
      </Sheet>
    )
  },
  table(d, system) {
    if (!d) return { head: ['Station', 'Asked', 'There is'], rows: [] }
    const [asks, gives] = ways(d, system)
    return { head: ['Station', 'Asked', 'There is'], rows: asks.map(([label, value], i) => [`${i + 1}`, `${label}: ${value}`, `${gives[i]![0]}: ${gives[i]![1]}`]) }
  },
})
