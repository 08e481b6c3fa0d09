import { gasPressure } from '@trochoid/compute/boost/quantities.ts'
import { siteAirPressure } from '@trochoid/compute/engine/fields.ts'
import { backPressureRatio, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; manifold: number; before: number; behind: number }
type Data = { all: Here[]; outside: number; threshold: number | null }

function from({ sheet, solved }: Build): Data {
  return {
    all: solved.points.flatMap(({ speed, values }): Here[] => {
      const manifold = values['engine.manifoldPressure'], before = values['boost.turbineInletPressure'], behind = values['boost.turbineOutletPressure']
      return manifold === undefined || before === undefined || behind === undefined ? [] : [{ speed, manifold, before, behind }]
    }),
    outside: valueAt(sheet, siteAirPressure) ?? 0, threshold: solved.build['boost.thresholdSpeed'] ?? null,
  }
}

/** Shaft speed from which the pressure before the turbine stays above the manifold’s, on a straight line between two points. */
function crossing(all: readonly Here[]): number | null {
  const over = (h: Here): number => h.before - h.manifold
  const i = all.findLastIndex((h) => over(h) <= 0)
  const a = all[i], b = all[i + 1]
  return a && b ? a.speed + ((b.speed - a.speed) * over(a)) / (over(a) - over(b)) : null
}

export default figure<Data>({
  title: 'Pressure in the manifold and on both sides of the turbine, full throttle',
  from,
  summary({ all, threshold }, system) {
    const last = all.at(-1)
    if (!last) return 'This build has no full-throttle points, so nothing is drawn.'
    const s = shown(shaftSpeed, system), p = shown(gasPressure, system), r = shown(backPressureRatio, system)
    const crosses = crossing(all)
    return `${threshold === null ? 'Boost does not reach its target at any speed of the sweep.' : `Boost reaches its target at ${s.say(threshold)}, by mean flow; a real engine is there somewhat earlier.`} All pressures are absolute.${crosses !== null ? ` Above ${s.say(crosses)} there is more pressure before the turbine than in the manifold.` : last.before > last.manifold ? ' At every speed there is more pressure before the turbine than in the manifold.' : ' At the highest speed the manifold is still above the pressure before the turbine.'} At ${s.say(last.speed)} the ratio of the two is ${r.say(last.before / last.manifold)}. Behind the turbine stand ${p.say(last.behind)}, which pipe and silencer ask for.`
  },
  Picture({ data: { all, outside, threshold }, system }) {
    if (all.length < 2) return null
    const s = shown(shaftSpeed, system), p = shown(gasPressure, system)
    const over = (of: 'manifold' | 'before' | 'behind'): Spot[] => all.map((h) => [s.of(h.speed), p.of(h[of])])
    const lines: Named[] = [
      { name: 'Manifold', class: 'line', spots: over('manifold') },
      { name: 'Before the turbine', class: 'line two', dash: long, spots: over('before') },
      { name: 'Behind the turbine', class: 'line two dash', spots: over('behind') },
    ]
    const x = [s.of(all[0]!.speed), s.of(all.at(-1)!.speed)] as const
    const on = frame({ x, y: [p.of(outside), Math.max(...all.map((h) => p.of(Math.max(h.manifold, h.before))))] })
    const reached = threshold === null ? null : on.x.at(s.of(threshold))
    return (
      <Sheet says="Absolute pressures in the manifold, before and behind the turbine, over shaft speed, with the boost threshold." height={on.height} named={lines}>
        <Axes on={on} x={s.head()} y={p.head('Absolute pressure')} />
        {reached !== null && <line class="cross" x1={reached} x2={reached} y1={on.top} y2={on.bottom} />}
        <Lines on={on} of={lines} />
        {reached !== null && <Words x={reached - 8} y={on.top + 14} anchor="end">threshold</Words>}
      </Sheet>
    )
  },
  table({ all }, system) {
    const s = shown(shaftSpeed, system), p = shown(gasPressure, system)
    return { head: [s.head(), p.head('Manifold'), p.head('Before the turbine'), p.head('Behind it'), 'Before over manifold'], rows: all.filter((_, i) => i % 4 === 3).map((h) => [writeNumber(s.of(h.speed)), ...[h.manifold, h.before, h.behind].map((v) => writeNumber(p.of(v))), writeNumber(h.before / h.manifold)]) }
  },
})
