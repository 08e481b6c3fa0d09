import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverHysteresis, handoverStart } from '@trochoid/compute/fuel/fields.ts'
import { switchOffPressure } from '@trochoid/compute/fuel/switchOffPressure.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { contour } from './plot/contour.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { stagesAt } from './staging.ts'

type Half = { pressures: number[]; duty: (number | null)[][] }
type Data = { speeds: number[]; full: number[]; below: Half; above: Half; start: number; off: number; idle: { speed: number; manifold: number } } | null

const levels = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.85, 1]

function from({ sheet, solved }: Build): Data {
  const all = solved.points.filter((p) => p.values['fuel.fuelPerCharge'] !== undefined)
  const points = all.filter((_, i) => i % 3 === (all.length + 2) % 3)
  const low = valueAt(sheet, idleManifoldPressure), start = valueAt(sheet, handoverStart), hysteresis = valueAt(sheet, handoverHysteresis)
  if (points.length < 2 || low === null || start === null || hysteresis === null) return null
  const full = points.map((p) => p.values['engine.manifoldPressure']!)
  const plans = points.map((p) => stagesAt(sheet, p))
  const half = (from: number, to: number, count: number): Half => {
    const pressures = Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))
    return { pressures, duty: pressures.map((p) => plans.map((plan) => plan(p)?.duty ?? null)) }
  }
  return {
    speeds: points.map((p) => p.speed), full, start, off: switchOffPressure({ start, hysteresis }),
    below: half(low, start - 1, 8), above: half(start, Math.max(start + 1000, 1.04 * Math.max(...full)), 16),
    idle: { speed: solved.idle.speed, manifold: low },
  }
}

/** The busiest place below the full-throttle line, by hand-over side. */
function worst(data: NonNullable<Data>, half: Half): { duty: number; speed: number; manifold: number } | null {
  let found: { duty: number; speed: number; manifold: number } | null = null
  half.duty.forEach((row, r) => row.forEach((duty, c) => {
    if (duty !== null && half.pressures[r]! <= data.full[c]! && duty > (found?.duty ?? 0)) found = { duty, speed: data.speeds[c]!, manifold: half.pressures[r]! }
  }))
  return found
}

export default figure<Data>({
  title: 'How much of the turn the busier stage is open, over speed and manifold pressure',
  from,
  summary(data, system) {
    if (!data) return 'This build has no full-throttle points, so nothing is drawn.'
    const s = shown(shaftSpeed, system), p = shown(manifoldPressure, system)
    const told = (half: Half, where: string): string => {
      const w = worst(data, half)
      return w ? ` ${where} the busiest place is ${s.say(w.speed)} and ${p.say(w.manifold)}: ${writeNumber(100 * w.duty)}\u202f% of the turn.` : ''
    }
    return `Each line joins places of equal duty. The heavier line is the engine at full throttle, the dot its idle, the band the gap between on and off of the secondaries.${told(data.below, 'Below hand-over, on the primaries alone,')}${told(data.above, 'Above it')} Breathing at part throttle is taken as at full throttle.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const s = shown(shaftSpeed, system), p = shown(manifoldPressure, system)
    const [first, last] = [Math.min(data.idle.speed || Infinity, data.speeds[0]!), data.speeds.at(-1)!]
    const on = frame({ x: [s.of(first), s.of(last)], y: [p.of(data.below.pressures[0]!), p.of(data.above.pressures.at(-1)!)], height: 420 })
    const lines = levels.flatMap((level) => [data.below, data.above].flatMap((half) => contour(data.speeds.map(s.of), half.pressures.map(p.of), half.duty, level).filter((spots) => spots.length > 2).map((spots, i) => ({ name: `${level} ${half === data.below} ${i}`, class: level >= 0.85 ? 'line two' : 'thin', dash: level >= 0.85 ? long : undefined, spots, level }))))
    const full: Named = { name: 'Full throttle', class: 'line', spots: data.speeds.map((v, i): Spot => [s.of(v), p.of(data.full[i]!)]) }
    const band = [on.y.at(p.of(data.start)), on.y.at(p.of(data.off))] as const
    return (
      <Sheet says="Contours of duty over shaft speed and manifold pressure, with the full-throttle line, idle and the hand-over." height={on.height} named={[full, { name: 'equal duty', class: 'thin' }, { name: '85 % and more', class: 'line two', dash: long }]}>
        <rect class="area" x={on.left} width={on.right - on.left} y={band[0]} height={band[1] - band[0]} />
        <Axes on={on} x={s.head()} y={p.head()} />
        <Lines on={on} of={lines} />
        <Lines on={on} of={[full]} />
        <circle class="mark" cx={on.x.at(s.of(data.idle.speed))} cy={on.y.at(p.of(data.idle.manifold))} r="6" />
        {lines.filter((l) => l.spots.length > 3).map((l) => {
          const [x, y] = l.spots[Math.floor(l.spots.length / 2)]!
          return <Words key={l.name} x={on.x.at(x)} y={on.y.at(y) + 5} anchor="middle">{`${Math.round(l.level * 100)}\u202f%`}</Words>
        })}
      </Sheet>
    )
  },
  table(data, system) {
    const s = shown(shaftSpeed, system), p = shown(manifoldPressure, system)
    const halves = data ? [data.below, data.above] : []
    const rows = halves.flatMap((half) => half.pressures.map((pressure, r) => ({ pressure, duty: half.duty[r]! })))
    const columns = data ? data.speeds.map((_, i) => i).filter((i) => i % 3 === 2) : []
    return {
      head: [p.head(), ...columns.map((c) => s.say(data!.speeds[c]!))],
      rows: rows.filter((_, i) => i % 4 === 3).map(({ pressure, duty }) => [writeNumber(p.of(pressure)), ...columns.map((c) => (duty[c] === null ? 'none' : `${writeNumber(100 * duty[c]!, 2)}\u202f%`))]),
    }
  },
})
