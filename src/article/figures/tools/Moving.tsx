import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverPressure, handoverWidth, pulseWidth } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { useMemo, useState } from 'preact/hooks'
import { csv, saveFile } from '../../../islands/parts/files.ts'
import { contour } from '../plot/contour.ts'
import { frame } from '../plot/frame.ts'
import { Lines, long, type Named, type Spot } from '../plot/Lines.tsx'
import { round, Sheet, Axes, Words } from '../plot/Sheet.tsx'
import { shown } from '../plot/shown.ts'
import { Slide } from '../plot/Slide.tsx'
import { cellAt, summed, type Plan } from './stagePlan.ts'

const levels = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.85, 1]
/** How a place is marked that cannot do what it is asked, by the number of its fault; the words stand in the key. */
const marks = ['', '·', '×', '−', '+'] as const
const faults = ['as planned', 'secondaries held at their least', 'secondaries wait: primaries could not step down so far', 'a primary below what it repeats', 'a pulse longer than the turn allows'] as const
const kPa = 1000

/** Contours of duty that follow the start and width of the hand-over as they are moved, with what cannot be met and why. */
export function Moving({ plan, system }: { plan: Plan; system: System }) {
  const [asked, ask] = useState({ start: plan.start, width: plan.width })
  const s = shown(shaftSpeed, system), p = shown(manifoldPressure, system), t = shown(pulseWidth, system), w = shown(handoverWidth, system)
  const { cells, sum } = useMemo(() => ({ cells: plan.pressures.map((_, row) => plan.columns.map((c) => cellAt(plan, c, row, asked))), sum: summed(plan, asked) }), [plan, asked])
  const speeds = plan.columns.map((c) => s.of(c.speed))
  const on = frame({ x: [Math.min(s.of(plan.idle.speed), speeds[0]!), speeds.at(-1)!], y: [p.of(plan.pressures[0]!), p.of(plan.pressures.at(-1)!)], height: 430 })
  // The duty steps at the start: each side has contours of its own.
  const side = (keep: (pressure: number) => boolean): Named[] => {
    const rows = plan.pressures.map((pressure, row) => ({ pressure, row })).filter(({ pressure }) => keep(pressure))
    if (rows.length < 2) return []
    return levels.flatMap((level) => contour(speeds, rows.map(({ pressure }) => p.of(pressure)), rows.map(({ row }) => cells[row]!.map((c) => c.duty)), level).filter((spots) => spots.length > 2)
      .map((spots, i) => ({ name: `${Math.round(level * 100)}\u202f% ${i}`, class: level >= 0.85 ? 'line two' : 'thin', dash: level >= 0.85 ? long : undefined, spots })))
  }
  const lines = [...side((pressure) => pressure < asked.start), ...side((pressure) => pressure >= asked.start)]
  const full: Named = { name: 'Full throttle', class: 'line', spots: plan.columns.map((c): Spot => [s.of(c.speed), p.of(c.full)]) }
  const at = (pressure: number): number => round(on.y.at(p.of(Math.min(Math.max(pressure, plan.pressures[0]!), plan.pressures.at(-1)!))))
  const low = plan.pressures[0]!, high = plan.pressures.at(-1)!
  const drag = (e: PointerEvent & { currentTarget: SVGSVGElement | SVGElement }): void => {
    if (e.buttons !== 1) return
    const box = (e.currentTarget.ownerSVGElement ?? e.currentTarget).getBoundingClientRect()
    const shownAt = on.y.back(((e.clientY - box.top) / box.height) * on.height)
    const pressure = low + ((shownAt - p.of(low)) / (p.of(high) - p.of(low))) * (high - low)
    ask((now) => ({ ...now, start: Math.round(Math.min(Math.max(pressure, low), high) / kPa) * kPa }))
  }
  const told = faults.map((says, i) => ({ says, mark: marks[i]!, count: sum.faults[i]! })).slice(1).filter(({ count }) => count > 0)
  return (
    <div>
      <div class="row">
        <Slide name="Secondaries begin at" low={Math.ceil(low / kPa)} high={Math.floor(high / kPa)} step={1} at={Math.round(asked.start / kPa)} says={shown(handoverPressure, system).say(asked.start)} onMove={(v) => ask({ ...asked, start: v * kPa })} />
        <Slide name="and take over within" low={2} high={100} step={1} at={Math.round(asked.width / kPa)} says={w.say(asked.width)} onMove={(v) => ask({ ...asked, width: v * kPa })} />
      </div>
      <Sheet says="Contours of duty over shaft speed and manifold pressure, with the full-throttle line, idle, the hand-over band and marks where the stages cannot do what they are asked." height={on.height} named={[full, { name: 'equal duty of the busier stage', class: 'thin' }, { name: '85 % and more', class: 'line two', dash: long }]}>
        <rect class="area" x={on.left} width={on.right - on.left} y={at(asked.start + asked.width)} height={Math.max(0, at(asked.start) - at(asked.start + asked.width))} />
        <Axes on={on} x={s.head()} y={p.head()} />
        <Lines on={on} of={lines} />
        <Lines on={on} of={[full]} />
        <line class="line dash" x1={on.left} x2={on.right} y1={at(asked.start)} y2={at(asked.start)} />
        <line x1={on.left} x2={on.right} y1={at(asked.start)} y2={at(asked.start)} stroke="transparent" stroke-width="26" cursor="ns-resize" onPointerDown={(e) => e.currentTarget.setPointerCapture(e.pointerId)} onPointerMove={drag} />
        {cells.flatMap((row, r) => row.map((cell, c) => (cell.fault > 0 && plan.pressures[r]! <= plan.columns[c]!.full
          ? <text key={`${r} ${c}`} x={round(on.x.at(speeds[c]!))} y={at(plan.pressures[r]!) + 5} text-anchor="middle">{marks[cell.fault]}</text> : null)))}
        <circle class="mark" cx={round(on.x.at(s.of(plan.idle.speed)))} cy={at(plan.idle.manifold)} r="6" />
        {lines.filter((l) => l.spots.length > 3).map((l, i) => {
          const [x, y] = l.spots[Math.floor(l.spots.length / 2)]!
          return <Words key={`${l.name} ${i}`} x={on.x.at(x)} y={on.y.at(y) + 5} anchor="middle">{l.name.split(' ')[0]}</Words>
        })}
      </Sheet>
      <p aria-live="polite">
        Smallest pulses under the full-throttle line: primaries <strong>{t.say(sum.primary)}</strong> ({t.say(plan.primaryLeast)} repeat), secondaries <strong>{Number.isFinite(sum.secondary) ? t.say(sum.secondary) : 'never open'}</strong> ({t.say(plan.secondaryLeast)} repeat).
        {' '}Busiest: {writeNumber(100 * sum.duty, 3)}{'\u202f'}% of the turn. Total injected fuel steps by {writeNumber(100 * sum.step, 2)}{'\u202f'}%.
      </p>
      {told.length > 0 && <ul class="small">{told.map(({ says, mark, count }) => <li key={says}><strong>{mark}</strong> {says}: {count} of the places drawn</li>)}</ul>}
      <p class="no-print"><button type="button" onClick={() => saveFile('hand-over.csv', 'text/csv', csv(rows(plan, asked, system)))}>Save as CSV</button></p>
    </div>
  )
}

/** Every place of the plan as rows with units in the head. */
function rows(plan: Plan, asked: { start: number; width: number }, system: System): string[][] {
  const s = shown(shaftSpeed, system), p = shown(manifoldPressure, system), t = shown(pulseWidth, system)
  const plain = (value: number): string => String(Number(value.toPrecision(6)))
  return [
    [s.head(), p.head(), t.head('Pulse of a primary'), t.head('Pulse of a secondary'), 'Duty of the busier stage, %', 'Under full throttle', 'What stands in its way'],
    ...plan.columns.flatMap((c) => plan.pressures.map((pressure, row) => {
      const cell = cellAt(plan, c, row, asked)
      return [plain(s.of(c.speed)), plain(p.of(pressure)), plain(t.of(cell.primaryPulse)), plain(t.of(cell.secondaryPulse)), plain(100 * cell.duty), pressure <= c.full ? 'yes' : 'no', faults[cell.fault]!]
    })),
  ]
}
