import { setEntry, valueAt } from '@trochoid/compute/build/sheet.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import { maxBackPressureRatio, turbineCapacity, wantedBySpeed } from '@trochoid/compute/boost/fields.ts'
import { flowCapacity } from '@trochoid/compute/boost/quantities.ts'
import { backPressureRatio, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Key, Lines, type Named } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Size = { readonly capacity: number; readonly threshold: number; readonly ratio: number; readonly fitted: boolean }
type Data = { readonly sizes: readonly Size[]; readonly lost: readonly number[]; readonly wanted: number | null; readonly accepted: number | null }

const times = [0.7, 0.8, 0.9, 1.15, 1.3, 1.45] as const

function from({ sheet, solved, beside }: Build): Data {
  const fitted = valueAt(sheet, turbineCapacity) ?? NaN
  const size = (of: Solved, by: number): Size => ({
    capacity: fitted * by, fitted: by === 1, threshold: of.build['boost.thresholdSpeed'] ?? NaN,
    ratio: Math.max(...of.points.map(({ values }) => values['engine.backPressureRatio'] ?? NaN).filter(Number.isFinite)),
  })
  const all = [size(solved, 1), ...beside.map((of, i) => size(of, times[i]!))].sort((a, b) => a.capacity - b.capacity)
  const known = (s: Size): boolean => Number.isFinite(s.threshold) && Number.isFinite(s.ratio)
  return { sizes: all.filter(known), lost: all.filter((s) => !known(s)).map((s) => s.capacity), wanted: valueAt(sheet, wantedBySpeed), accepted: valueAt(sheet, maxBackPressureRatio) }
}

export default figure<Data>({
  title: 'One turbine, two wishes: early boost and a free exhaust',
  beside: (sheet) => times.map((by) => setEntry(sheet, turbineCapacity.path, { ...sheet.entries[turbineCapacity.path], value: (valueAt(sheet, turbineCapacity) ?? NaN) * by })),
  from,
  summary({ sizes, lost, wanted, accepted }, system) {
    const here = sizes.find(({ fitted }) => fitted), first = sizes[0], last = sizes.at(-1)
    if (!first || !last || first === last) return 'No turbine size of this build brings boost to its target within the sweep, so nothing is drawn.'
    const s = shown(shaftSpeed, system), r = shown(backPressureRatio, system), m = shown(flowCapacity, system)
    return `Each dot is the whole build solved with another turbine, from ${m.say(first.capacity)} to ${m.say(last.capacity)} of flow capacity.${here ? ` The one fitted, ${m.say(here.capacity)}, brings full boost at ${s.say(here.threshold)}, and at worst the engine breathes out against ${r.say(here.ratio)} times its manifold pressure.` : ''} A smaller turbine moves up and to the left: earlier, and more in the way. No size moves down and left: that takes another turbine or exhaust, not another size.${wanted !== null && accepted !== null ? ` Left of ${s.say(wanted)} and below ${r.say(accepted)} both wishes are met.` : ''}${lost.length > 0 ? ` With ${lost.map((c) => m.say(c)).join(', ')} boost never reaches its target here.` : ''} Mean flow only: real pulses bring boost somewhat earlier.`
  },
  Picture({ data: { sizes, wanted, accepted }, system }) {
    if (sizes.length < 2) return null
    const s = shown(shaftSpeed, system), m = shown(flowCapacity, system)
    const xs = sizes.map((z) => s.of(z.threshold)), ys = sizes.map((z) => z.ratio)
    const on = frame({ x: [Math.min(...xs, ...(wanted === null ? [] : [s.of(wanted)])) - 300, Math.max(...xs, ...(wanted === null ? [] : [s.of(wanted)])) + 300], y: [Math.min(1, ...ys), Math.max(...ys, accepted ?? 0) * 1.03], height: 400 })
    const line: Named = { name: 'Turbine sizes', class: 'line', spots: sizes.map((z) => [s.of(z.threshold), z.ratio]) }
    const right = wanted === null ? on.right : on.x.at(s.of(wanted)), high = accepted === null ? on.top : on.y.at(accepted)
    return (
      <>
        <Sheet says="Back-pressure ratio over the shaft speed of full boost for seven turbine sizes, with both limits." height={on.height}>
          {wanted !== null && accepted !== null && <rect class="area" x={on.left} width={Math.max(0, right - on.left)} y={high} height={Math.max(0, on.bottom - high)} />}
          <Axes on={on} x={s.head('Full boost from')} y="Most, before the turbine over manifold" />
          {wanted !== null && <line class="cross" x1={right} x2={right} y1={on.top} y2={on.bottom} />}
          {accepted !== null && <line class="cross" x1={on.left} x2={on.right} y1={high} y2={high} />}
          <Lines on={on} of={[line]} />
          {sizes.map((z) => <circle key={z.capacity} class={z.fitted ? 'mark' : 'fill'} cx={on.x.at(s.of(z.threshold))} cy={on.y.at(z.ratio)} r={z.fitted ? 7 : 4} />)}
          {sizes.map((z) => (z.fitted || z === sizes[0] || z === sizes.at(-1)) && <Words key={z.capacity} x={on.x.at(s.of(z.threshold)) + (z === sizes.at(-1) ? 6 : 10)} y={on.y.at(z.ratio) - (z === sizes.at(-1) ? 14 : 9)} anchor={z === sizes.at(-1) ? 'end' : 'start'} strong={z.fitted}>{z.fitted ? `fitted, ${m.say(z.capacity)}` : m.say(z.capacity)}</Words>)}
          {wanted !== null && accepted !== null && <Words x={on.left + 8} y={on.bottom - 10}>both wishes met</Words>}
        </Sheet>
        <Key of={[{ name: 'Turbine sizes', class: 'line' }, { name: 'What you ask and accept', class: 'cross' }]} />
      </>
    )
  },
  table({ sizes }, system) {
    const s = shown(shaftSpeed, system), m = shown(flowCapacity, system)
    return { head: [m.head('Turbine flow capacity'), s.head('Full boost from'), 'Most before turbine over manifold'], rows: sizes.map((z) => [`${writeNumber(m.of(z.capacity))}${z.fitted ? ' (fitted)' : ''}`, writeNumber(s.of(z.threshold), 4), writeNumber(z.ratio)]) }
  },
})
