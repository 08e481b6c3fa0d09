import { at as boost } from '@trochoid/compute/boost/point.ts'
import { at as engine } from '@trochoid/compute/engine/point.ts'
import { longestDuty } from '@trochoid/compute/fuel/fields.ts'
import { at as fuel } from '@trochoid/compute/fuel/point.ts'
import type { PointValue } from '@trochoid/compute/build/pointValue.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { Curves, level } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

const channels: readonly PointValue[] = [boost.boost, engine.lambda, fuel.primaryDuty, fuel.secondaryDuty, fuel.railPressure, engine.charge]
const primary = 2, secondary = 3
type Row = { readonly speed: number; readonly values: readonly (number | null)[] }
type Data = { readonly rows: readonly Row[]; readonly limit: number | null }

/** What each channel of a log should show over a full pull, if the car is what its sheet says. */
export default figure<Data>({
  title: 'The pull as the sheet says it',
  from: ({ sheet, solved }) => ({
    limit: valueAt(sheet, longestDuty),
    rows: solved.points.filter((p) => p.values[fuel.primaryDuty.path] !== undefined).map((p) => ({ speed: p.speed, values: channels.map(({ path }) => p.values[path] ?? null) })),
  }),
  summary({ rows }, system) {
    const first = rows[0], last = rows.at(-1)
    if (!first || !last) return 'This build has no full-throttle point yet, so nothing is drawn.'
    const said = (row: Row, k: number): string => (row.values[k] === null ? 'nothing' : shown(channels[k]!.shape, system).say(row.values[k]!))
    return `Full throttle, each speed as settled. From ${shown(engine.speed.shape, system).say(first.speed)} to ${shown(engine.speed.shape, system).say(last.speed)} the primaries go from ${said(first, primary)} to ${said(last, primary)} of the turn and the secondaries from ${said(first, secondary)} to ${said(last, secondary)}, while the rail goes from ${said(first, 4)} to ${said(last, 4)} and the charge from ${said(first, 5)} to ${said(last, 5)}. The table has every channel: print it and take it along.`
  },
  Picture({ data: { rows, limit }, system }) {
    if (rows.length < 2) return null
    const n = shown(engine.speed.shape, system), d = shown(fuel.primaryDuty.shape, system)
    const over = (k: number): Spot[] => rows.flatMap(({ speed, values }): Spot[] => (values[k] === null ? [] : [[n.of(speed), d.of(values[k]!)]]))
    return <Curves says="Duty of the primaries and of the secondaries over shaft speed, as predicted." x={n.head('Shaft speed')} y={d.head('Duty')} reach={[0]}
      lines={[{ name: 'Primaries', class: 'line', spots: over(primary) }, { name: 'Secondaries', class: 'line two', dash: long, spots: over(secondary) }]}
      levels={limit === null ? [] : level('longest duty accepted', 'line dash', [n.of(rows[0]!.speed), n.of(rows.at(-1)!.speed)], d.of(limit))} />
  },
  table({ rows }, system) {
    const n = shown(engine.speed.shape, system)
    const every = Math.max(1, Math.ceil(rows.length / 12))
    return {
      head: [n.head('Shaft speed'), ...channels.map(({ shape, label }) => shown(shape, system).head(label ?? shape.name))],
      rows: rows.filter((_, i) => (rows.length - 1 - i) % every === 0).map(({ speed, values }) => [writeNumber(n.of(speed), 4), ...values.map((v, k) => (v === null ? '–' : writeNumber(shown(channels[k]!.shape, system).of(v))))]),
    }
  },
})
