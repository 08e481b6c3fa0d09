import { turbineCapacity } from '@trochoid/compute/boost/fields.ts'
import { setEntry, valueAt, type Sheet as BuildSheet } from '@trochoid/compute/build/sheet.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import { backPressureRatio, power, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves } from './plot/Curves.tsx'
import type { Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { capacity: number; threshold: number | null; back: number | null; power: number | null }
type Data = { all: Here[]; own: number } | null

const times = [0.7, 0.85, 1.15, 1.3, 1.5] as const
const widths = (sheet: BuildSheet): readonly number[] => { const own = valueAt(sheet, turbineCapacity); return own === null ? [] : times.map((t) => own * t) }

function here(capacity: number, { points, build }: Solved): Here {
  const most = (path: string): number | null => points.reduce<number | null>((best, { values }) => { const v = values[path]; return v === undefined || (best !== null && v <= best) ? best : v }, null)
  return { capacity, threshold: build['boost.thresholdSpeed'] ?? null, back: most('engine.backPressureRatio'), power: most('engine.power') }
}

export default figure<Data>({
  title: 'What a wider turbine gives at the top and takes at the bottom',
  beside: (sheet) => widths(sheet).map((capacity) => setEntry(sheet, turbineCapacity.path, { value: capacity })),
  from({ sheet, solved, beside }: Build) {
    const own = valueAt(sheet, turbineCapacity)
    if (own === null) return null
    const all = [here(own, solved), ...beside.map((s, i) => here(widths(sheet)[i]!, s))].sort((a, b) => a.capacity - b.capacity)
    return { all, own }
  },
  summary(data, system) {
    const seen = data?.all.filter((h) => h.threshold !== null && h.back !== null) ?? []
    if (!data || seen.length < 2) return 'With none of these turbines does the build reach its boost, so nothing is drawn.'
    const [least, most] = [seen[0]!, seen.at(-1)!]
    const s = shown(shaftSpeed, system), c = shown(turbineCapacity.shape, system), b = shown(backPressureRatio, system), p = shown(power, system)
    return `Each point is the whole build solved anew. From a turbine of ${c.say(least.capacity)} to one of ${c.say(most.capacity)}, boost comes at ${s.say(most.threshold!)} instead of ${s.say(least.threshold!)}; the highest back-pressure ratio goes from ${b.say(least.back!)} to ${b.say(most.back!)}${least.power !== null && most.power !== null ? ` and the most power from ${p.say(least.power)} to ${p.say(most.power)}` : ''}. This build has ${c.say(data.own)}.`
  },
  Picture({ data, system }) {
    const s = shown(shaftSpeed, system), b = shown(backPressureRatio, system), c = shown(turbineCapacity.shape, system)
    const seen = data?.all.filter((h) => h.threshold !== null && h.back !== null) ?? []
    if (!data || seen.length < 2) return null
    const spots = seen.map((h): Spot => [s.of(h.threshold!), b.of(h.back!)])
    return <Curves says="Highest back-pressure ratio over the shaft speed at which boost is reached, for turbines of several widths." x={s.head('Boost reached from')} y={b.head('Highest back-pressure ratio')}
      lines={[{ name: 'Turbines from narrow to wide', class: 'line', spots }]}
      marks={seen.map((h, i) => ({ at: spots[i]!, says: `${c.say(h.capacity)}${h.capacity === data.own ? ', this build' : ''}`, to: i === 0 ? 'right' : 'above' }))} />
  },
  table(data, system) {
    const s = shown(shaftSpeed, system), b = shown(backPressureRatio, system), c = shown(turbineCapacity.shape, system), p = shown(power, system)
    const cell = (v: number | null, of: (si: number) => number): string => (v === null ? 'none' : writeNumber(of(v)))
    return { head: [c.head(), s.head('Boost reached from'), b.head('Highest back-pressure ratio'), p.head('Most power')], rows: (data?.all ?? []).map((h) => [writeNumber(c.of(h.capacity)), cell(h.threshold, s.of), cell(h.back, b.of), cell(h.power, p.of)]) }
  },
})
