import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { handoverLambda, handoverStart, primaryDeadTime } from '@trochoid/compute/fuel/fields.ts'
import { fuelPerCharge, stageShare } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { firstFull, stagesAt } from './staging.ts'

type Data = { speed: number; start: number; fuel: number; share: number; lambda: number } | null

/** Charges that the way from secondary to port is drawn to hold: an assumption, said in the summary. */
const held = 2
const turns = [-2, -1, 0, 1, 2, 3, 4]
/** Share of the fuel that primaries and secondaries put in, or bring to the rotor, at a turn after the hand-over. */
const injected = (turn: number, share: number) => (turn < 0 ? { primary: 1, secondary: 0 } : { primary: 1 - share, secondary: share })
const arriving = (turn: number, share: number) => ({ primary: injected(turn, share).primary, secondary: injected(turn - held, share).secondary })

function from({ sheet, solved }: Build): Data {
  const point = firstFull(solved.points)
  const start = valueAt(sheet, handoverStart), wanted = valueAt(sheet, handoverLambda), dead = valueAt(sheet, primaryDeadTime)
  if (!point || start === null || wanted === null || dead === null) return null
  const at = stagesAt(sheet, point)
  const before = at(start - 1), after = at(start)
  if (!before || !after || after.secondary === 0) return null
  // The same injectors at the same pressure: fuel goes with pulse less dead time.
  return { speed: point.speed, start, fuel: before.fuel, share: 1 - (after.primary - dead) / (before.primary - dead), lambda: wanted }
}

export default figure<Data>({
  title: 'Injected without a gap, arriving with one',
  from,
  summary(data, system) {
    if (!data) return 'The secondaries of this build do not come in at the hand-over pressure, so nothing is drawn.'
    return `Hand-over at ${shown(manifoldPressure, system).say(data.start)} and ${shown(shaftSpeed, system).say(data.speed)}, ${shown(fuelPerCharge, system).say(data.fuel)} to a charge. The primaries give up ${shown(stageShare, system).say(data.share)} of it at once; what the secondaries give instead is still on its way. Until it arrives each charge is that much short: lambda ${writeNumber(data.lambda)} becomes ${writeNumber(data.lambda / (1 - data.share))} if nothing is added. The way is drawn as holding ${held} charges, which is an assumption; fuel on the walls, which makes it slower, is left out.`
  },
  Picture({ data }) {
    if (!data) return null
    const height = 330, step = 620 / turns.length, floors = [140, 290], tall = 96
    const panels = [['Injected', injected, floors[0]!], ['Arriving at the rotor', arriving, floors[1]!]] as const
    return (
      <Sheet says="Fuel of each charge by stage over shaft turns: injected above, arriving below, with a gap after the hand-over." height={height}>
        {panels.map(([says, of, floor]) => (
          <g key={says}>
            <text class="strong" x="4" y={floor - tall - 14}>{says}</text>
            <line class="thin" x1="4" x2="636" y1={floor - tall} y2={floor - tall} stroke-dasharray="3 4" />
            {turns.map((turn, i) => {
              const { primary, secondary } = of(turn, data.share)
              const x = round(10 + i * step)
              return (
                <g key={turn}>
                  <rect class="fill" opacity=".55" x={x} width={round(step - 12)} y={round(floor - tall * primary)} height={round(tall * primary)} />
                  <rect class="fill-accent" x={x} width={round(step - 12)} y={round(floor - tall * (primary + secondary))} height={round(tall * secondary)} />
                </g>
              )
            })}
            <line class="axis" x1="4" x2="636" y1={floor} y2={floor} />
          </g>
        ))}
        {turns.map((turn, i) => <text key={turn} x={round(10 + i * step + (step - 12) / 2)} y={floors[1]! + 24} text-anchor="middle">{turn === 0 ? 'turn 0' : writeNumber(turn, 1)}</text>)}
        <Words x={10 + 2 * step + 8} y={floors[1]! - tall * (1 - data.share) - 6}>short</Words>
      </Sheet>
    )
  },
  table: (data) => ({
    head: ['Turn after hand-over', 'Primaries, injected, %', 'Secondaries, injected, %', 'Arriving, %'],
    rows: data ? turns.map((turn) => {
      const put = injected(turn, data.share), come = arriving(turn, data.share)
      return [writeNumber(turn, 1), writeNumber(100 * put.primary), writeNumber(100 * put.secondary), writeNumber(100 * (come.primary + come.secondary))]
    }) : [],
  }),
})
