import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverStart, primaryDeadTime, secondaryDeadTime } from '@trochoid/compute/fuel/fields.ts'
import injectorDuty from '@trochoid/compute/fuel/injectorDuty.calc.ts'
import { dutyCycle, pulseWidth, turnTime } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { stagesAt } from './staging.ts'

type Row = { says: string; speed: number; turn: number; pulse: number; dead: number }
type Data = Row[]

function from({ sheet, solved, point }: Build): Data {
  const rows: Row[] = []
  const dead = valueAt(sheet, primaryDeadTime) ?? 0
  const add = (says: string, speed: number | undefined, turn: number | undefined, pulse: number | undefined, lost = dead): void => {
    if (speed !== undefined && turn !== undefined && pulse !== undefined && pulse > 0) rows.push({ says, speed, turn, pulse, dead: lost })
  }
  const { idle } = solved
  add('Idle: primaries', idle.speed, idle.values['fuel.turnTime'], idle.values['fuel.primaryPulse'])
  const best = solved.points.find((p) => p.speed === point['engine.speed'])
  if (!best) return rows
  const turn = point['fuel.turnTime']
  const start = valueAt(sheet, handoverStart)
  const before = start === null ? null : stagesAt(sheet, best)(start - 1)
  add('Just below hand-over: primaries', best.speed, turn, before?.primary)
  add('Most power: primaries', best.speed, turn, point['fuel.primaryPulse'])
  add('Most power: secondaries', best.speed, turn, point['fuel.secondaryPulse'], valueAt(sheet, secondaryDeadTime) ?? 0)
  const alone: AnyCalculation = injectorDuty
  try { add('Most power: primaries alone', best.speed, turn, alone.answer(valuesFor(alone, sheet, point))['pulse']) } catch { /* Without primaries there is no such row. */ }
  return rows
}

const left = 4, width = 632, step = 64, tall = 22

export default figure<Data>({
  title: 'The pulse in one shaft turn',
  from,
  summary(rows, system) {
    if (rows.length === 0) return 'This build has no idle and no full-throttle point, so nothing is drawn.'
    const t = shown(pulseWidth, system), s = shown(shaftSpeed, system)
    const told = rows.map((r) => `${r.says} ${t.say(r.pulse)} of ${t.say(r.turn)} at ${s.say(r.speed)}`).join('; ')
    return `${told}. Each frame is one shaft turn, drawn to the same length. Grey is dead time, in which no fuel counts; solid is fuel. A bar that runs past its frame cannot be done.`
  },
  Picture({ data: rows, system }) {
    const t = shown(pulseWidth, system), s = shown(shaftSpeed, system)
    const most = Math.max(1, ...rows.map((r) => r.pulse / r.turn))
    const x = (share: number): number => round(left + (width * share) / most)
    return (
      <Sheet says="Bars of one shaft turn each, with dead time and fuel of the pulse in it." height={rows.length * step + 30}>
        <line class="thin" x1={x(1)} x2={x(1)} y1="4" y2={rows.length * step + 6} />
        {rows.map((r, i) => {
          const y = i * step + 28
          return (
            <g key={r.says}>
              <rect class="area" x={left} width={round(x(r.dead / r.turn) - left)} y={y} height={tall} />
              <rect class={r.pulse > r.turn ? 'fill-bad' : 'fill-accent'} x={x(r.dead / r.turn)} width={round(x(r.pulse / r.turn) - x(r.dead / r.turn))} y={y} height={tall} />
              <rect class="axis" x={left} width={round(x(1) - left)} y={y} height={tall} />
              <Words x={left} y={y - 8} strong>{r.says}, {s.say(r.speed)}</Words>
              {r.pulse / r.turn < 0.72 * most && <Words x={x(r.pulse / r.turn) + 8} y={y + tall - 5}>{t.say(r.pulse)}</Words>}
            </g>
          )
        })}
        <text x={x(1)} y={rows.length * step + 26} text-anchor={most > 1.2 ? 'middle' : 'end'}>one shaft turn</text>
      </Sheet>
    )
  },
  table(rows, system) {
    const t = shown(pulseWidth, system), s = shown(shaftSpeed, system)
    return {
      head: ['Where', s.head(), t.head(turnTime.name), t.head(), t.head('Dead time in it'), shown(dutyCycle, system).head()],
      rows: rows.map((r) => [r.says, writeNumber(s.of(r.speed)), writeNumber(t.of(r.turn)), writeNumber(t.of(r.pulse)), writeNumber(t.of(r.dead)), writeNumber(shown(dutyCycle, system).of(r.pulse / r.turn))]),
    }
  },
})
