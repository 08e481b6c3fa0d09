import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverHysteresis, handoverStart, primarySmallestPulse, secondarySmallestPulse } from '@trochoid/compute/fuel/fields.ts'
import { pulseWidth } from '@trochoid/compute/fuel/quantities.ts'
import { switchOffPressure } from '@trochoid/compute/fuel/switchOffPressure.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { firstFull, stagesAt, type Stages } from './staging.ts'

type Data = { speed: number; rising: Stages[]; falling: Stages[]; start: number; off: number; primaryLeast: number; secondaryLeast: number } | null

function from({ sheet, solved }: Build): Data {
  const point = firstFull(solved.points)
  const low = valueAt(sheet, idleManifoldPressure), start = valueAt(sheet, handoverStart), hysteresis = valueAt(sheet, handoverHysteresis)
  const primaryLeast = valueAt(sheet, primarySmallestPulse), secondaryLeast = valueAt(sheet, secondarySmallestPulse)
  if (!point || low === null || start === null || hysteresis === null || primaryLeast === null || secondaryLeast === null) return null
  const at = stagesAt(sheet, point)
  const full = point.values['engine.manifoldPressure']!
  const between = (a: number, b: number, count: number): number[] => Array.from({ length: count + 1 }, (_, i) => a + ((b - a) * i) / count)
  const off = switchOffPressure({ start, hysteresis })
  const some = (list: readonly (Stages | null)[]): Stages[] => list.filter((s) => s !== null)
  return {
    speed: point.speed, start, off, primaryLeast, secondaryLeast,
    rising: some([...between(low, start - 1, 8), ...between(start, full, 40)].filter((p) => p <= full).map((p) => at(p))),
    // While load falls the secondaries hold on at their least until the gap is passed.
    falling: some([off, start - 1].map((p) => at(p, { start: off, width: 1e9 }))),
  }
}

export default figure<Data>({
  title: 'What each stage is asked for over manifold pressure',
  from,
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, so nothing is drawn.'
    const p = shown(manifoldPressure, system), t = shown(pulseWidth, system)
    const before = data.rising.findLast((s) => s.manifold < data.start)
    const after = data.rising.find((s) => s.manifold >= data.start && s.secondary > 0)
    const step = before && after ? ` At ${p.say(after.manifold)} the secondaries step from nothing to ${t.say(after.secondary)} and the primaries from ${t.say(before.primary)} down to ${t.say(after.primary)}: the same fuel, parted anew.` : ' The secondaries never come in.'
    return `At ${shown(shaftSpeed, system).say(data.speed)}, the lowest speed of the sweep with full boost.${step} As load falls they hold on until ${p.say(data.off)}. Breathing is taken as at full throttle, so below the pressure outside this is an estimate.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const p = shown(manifoldPressure, system), t = shown(pulseWidth, system)
    const spots = (list: readonly Stages[], of: 'primary' | 'secondary'): Spot[] => list.map((s) => [p.of(s.manifold), t.of(s[of])])
    const first = p.of(data.rising[0]?.manifold ?? 0), last = p.of(data.rising.at(-1)?.manifold ?? 1)
    const on = frame({ x: [first, last], y: [0, Math.max(1e-3, ...data.rising.map((s) => t.of(Math.max(s.primary, s.secondary))))] })
    const lines: Named[] = [
      { name: 'Primaries', class: 'line', spots: spots(data.rising, 'primary') },
      { name: 'Secondaries', class: 'line two', dash: long, spots: spots(data.rising, 'secondary') },
    ]
    const falling: Named[] = (['primary', 'secondary'] as const).map((of) => ({ name: of, class: of === 'primary' ? 'line dash' : 'line two dash', spots: spots(data.falling, of) }))
    const least: Named[] = ([['primary', 'line thin', data.primaryLeast], ['secondary', 'line two thin', data.secondaryLeast]] as const).map(([name, c, y]) => ({ name, class: c, spots: [[first, t.of(y)], [last, t.of(y)]] }))
    const off = on.x.at(p.of(data.off)), start = on.x.at(p.of(data.start))
    return (
      <Sheet says="Pulse of primaries and secondaries over manifold pressure, with the smallest pulse of each." height={on.height} named={[...lines, { name: 'while load falls', class: 'line dash' }, { name: 'smallest that repeat', class: 'line thin' }]}>
        <rect class="area" x={off} width={Math.max(0, start - off)} y={on.top} height={on.bottom - on.top} />
        <Axes on={on} x={p.head()} y={t.head()} />
        <g opacity=".6"><Lines on={on} of={least} /></g>
        <Lines on={on} of={[...lines, ...falling]} />
        <Words x={off - 6} y={on.top + 14} anchor="end">off</Words>
        <Words x={start + 6} y={on.top + 14}>on</Words>
        <Words x={on.right} y={on.y.at(t.of(Math.min(data.primaryLeast, data.secondaryLeast))) + 22} anchor="end">smallest that repeat</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const p = shown(manifoldPressure, system), t = shown(pulseWidth, system)
    const step = Math.max(1, Math.ceil((data?.rising.length ?? 0) / 14))
    return {
      head: [p.head(), t.head('Primaries'), t.head('Secondaries'), 'Busier stage, % of the turn'],
      rows: (data?.rising ?? []).filter((s, i, all) => i % step === 0 || s.manifold >= data!.start !== (all[i + 1]?.manifold ?? Infinity) >= data!.start).map((s) =>
        [writeNumber(p.of(s.manifold)), writeNumber(t.of(s.primary)), s.secondary > 0 ? writeNumber(t.of(s.secondary)) : 'rest', writeNumber(100 * s.duty)]),
    }
  },
})
