import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { ductArea, ductLength, manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverLambda, handoverStart, primaryDeadTime } from '@trochoid/compute/fuel/fields.ts'
import { arrivalDelay, fuelPerCharge, stageShare } from '@trochoid/compute/fuel/quantities.ts'
import tipIn from '@trochoid/compute/fuel/tipIn.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { firstFull, stagesAt } from './staging.ts'

type Data = { speed: number; start: number; fuel: number; share: number; lambda: number; distance: number; area: number; delay: number; turns: number } | null

const turns = [-2, -1, 0, 1, 2, 3, 4]
/** Share of the fuel that each stage puts in at a turn after the hand-over. */
const injected = (turn: number, share: number) => (turn < 0 ? { primary: 1, secondary: 0 } : { primary: 1 - share, secondary: share })
/** What reaches the rotor: the primaries' fuel at once, that of the secondaries some turns late, a shot that falls between two charges parted among them. */
function arriving(turn: number, share: number, late: number) {
  const whole = Math.floor(late)
  const before = injected(turn - whole, share).secondary
  return { primary: injected(turn, share).primary, secondary: before + (injected(turn - whole - 1, share).secondary - before) * (late - whole) }
}

function from({ sheet, solved }: Build): Data {
  const point = firstFull(solved.points)
  const start = valueAt(sheet, handoverStart), wanted = valueAt(sheet, handoverLambda), dead = valueAt(sheet, primaryDeadTime)
  if (!point || start === null || wanted === null || dead === null) return null
  const at = stagesAt(sheet, point)
  const before = at(start - 1), after = at(start)
  if (!before || !after || after.secondary === 0) return null
  const way: AnyCalculation = tipIn
  const given = valuesFor(way, sheet, point.values)
  const { delay, turns: late } = way.answer(given)
  // The same injectors at the same pressure: fuel goes with pulse less dead time.
  const share = 1 - (after.primary - dead) / (before.primary - dead)
  return { speed: point.speed, start, fuel: before.fuel, share, lambda: wanted, distance: given['distance'] as number, area: given['area'] as number, delay: delay!, turns: late! }
}

export default figure<Data>({
  title: 'Injected without a gap, arriving with one',
  from,
  summary(data, system) {
    if (!data) return 'The secondaries of this build do not come in at the hand-over pressure, so nothing is drawn.'
    return `Hand-over at ${shown(manifoldPressure, system).say(data.start)} and ${shown(shaftSpeed, system).say(data.speed)}, ${shown(fuelPerCharge, system).say(data.fuel)} to a charge. The primaries give up ${shown(stageShare, system).say(data.share)} of it at once. A way of ${shown(ductLength, system).say(data.distance)} through ${shown(ductArea, system).say(data.area)}, the tip-in card’s own, brings the secondaries’ fuel ${shown(arrivalDelay, system).say(data.delay)} or ${writeNumber(data.turns)} charges late. Until then a charge is that much short: lambda ${writeNumber(data.lambda)} becomes ${writeNumber(data.lambda / (1 - data.share))} if nothing is added. Fuel on the walls, which softens the dip and draws it out, is left out.`
  },
  Picture({ data }) {
    if (!data) return null
    const step = 620 / turns.length, wide = round(step - 12), tall = 96
    const panels = [
      { says: 'Injected: primaries below, secondaries on top', floor: 136, of: (turn: number) => injected(turn, data.share) },
      { says: 'Arriving at the rotor', floor: 286, of: (turn: number) => arriving(turn, data.share, data.turns) },
    ]
    return (
      <Sheet says="Fuel of each charge by stage over shaft turns: injected above, arriving below, with a gap after the hand-over." height={322}>
        {panels.map(({ says, floor, of }) => (
          <g key={says}>
            <text class="strong" x="4" y={floor - tall - 14}>{says}</text>
            <line class="thin" x1="4" x2="636" y1={floor - tall} y2={floor - tall} stroke-dasharray="3 4" />
            {turns.map((turn, i) => {
              const { primary, secondary } = of(turn)
              const x = round(10 + i * step)
              return (
                <g key={turn}>
                  <rect class="fill" opacity=".6" x={x} width={wide} y={round(floor - tall * primary)} height={round(tall * primary)} />
                  {secondary > 0 && <rect class="fill-accent" x={x} width={wide} y={round(floor - tall * (primary + secondary))} height={round(tall * secondary)} />}
                </g>
              )
            })}
            <line class="axis" x1="4" x2="636" y1={floor} y2={floor} />
          </g>
        ))}
        {turns.map((turn, i) => <text key={turn} x={round(10 + i * step + wide / 2)} y="312" text-anchor="middle">{turn === 0 ? 'turn 0' : writeNumber(turn, 1)}</text>)}
      </Sheet>
    )
  },
  table: (data) => ({
    head: ['Turn after hand-over', 'Primaries, injected, %', 'Secondaries, injected, %', 'Arriving, %'],
    rows: data ? turns.map((turn) => {
      const put = injected(turn, data.share), come = arriving(turn, data.share, data.turns)
      return [writeNumber(turn, 1), writeNumber(100 * put.primary), writeNumber(100 * put.secondary), writeNumber(100 * (come.primary + come.secondary))]
    }) : [],
  }),
})
