import { useState } from 'preact/hooks'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { unbalance, unbalanceAngle, unbalanceForce } from '@trochoid/compute/driveline/quantities.ts'
import unbalanceSum from '@trochoid/compute/driveline/unbalanceSum.calc.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { deg } from '@trochoid/compute/quantity/si.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Arrow = { name: string; amount: number; angle: number }
type Data = { parts: Arrow[]; speed: number }
/** The part that is put on turned, among those given. */
const turned = 1

function from({ point }: Build): Data {
  const { given } = begins(unbalanceSum)
  const part = (name: string, n: number): Arrow => ({ name, amount: given(`u${n}`), angle: given(`a${n}`) })
  return { speed: point['engine.speed'] ?? given('speed'), parts: [part('Flywheel', 1), part('Clutch cover', 2), part('Front pulley', 3)] }
}

/** What the three leave together with the cover at an angle of its own. */
function left({ parts, speed }: Data, cover: number) {
  const all = parts.map((part, i) => (i === turned ? { ...part, angle: cover } : part))
  const of: AnyCalculation = unbalanceSum
  const here = of.answer({ u4: 0, a4: 0, speed, ...Object.fromEntries(all.flatMap(({ amount, angle }, i) => [[`u${i + 1}`, amount], [`a${i + 1}`, angle]])) })
  return { all, amount: here['amount']!, force: here['force']! }
}

const start = [190, 250] as const, reach = 330
/** How each arrow is drawn and where its name stands, from its middle: told apart where one lies on another. */
const looks = [{ stroke: 'var(--faint)', width: 9, dash: undefined, dx: 0, dy: 30 }, { stroke: 'var(--accent)', width: 2.4, dash: undefined, dx: 8, dy: -12 }, { stroke: 'var(--ink)', width: 2.4, dash: '5 4', dx: 12, dy: -6 }] as const

function Picture({ data, system }: { data: Data; system: System }) {
  const [cover, turn] = useState(data.parts[turned]!.angle)
  const u = shown(unbalance, system), f = shown(unbalanceForce, system)
  const here = left(data, cover)
  const scale = reach / (data.parts[0]!.amount + data.parts[turned]!.amount)
  const degrees = Math.round((cover * 180) / Math.PI)
  let x: number = start[0], y: number = start[1]
  const legs = here.all.map(({ name, amount, angle }) => {
    const from = [x, y] as const
    x += amount * scale * Math.cos(angle)
    y -= amount * scale * Math.sin(angle)
    return { name, amount, from, to: [x, y] as const }
  })
  const told = `Cover turned to ${degrees}°: ${u.say(here.amount)} left, ${f.say(here.force)} turning with the shaft.`
  return (
    <>
      <Sheet says="Three unbalances as arrows laid one after the other, and the arrow from start to end that is left." height={360}>
        {legs.map(({ name, from, to }, i) => <g key={name}>
          <path fill="none" stroke={looks[i]!.stroke} stroke-width={looks[i]!.width} stroke-dasharray={looks[i]!.dash} d={`M${from.map(round).join(' ')}L${to.map(round).join(' ')}`} />
          <circle class="fill" cx={round(to[0])} cy={round(to[1])} r="4" />
        </g>)}
        <path d={`M${start.join(' ')}L${round(x)} ${round(y)}`} fill="none" stroke="var(--accent)" stroke-width="5" opacity=".5" />
        <circle class="mark" cx={start[0]} cy={start[1]} r="6" />
        {legs.map(({ name, amount, from, to }, i) => <Words key={name} x={(from[0] + to[0]) / 2 + looks[i]!.dx} y={(from[1] + to[1]) / 2 + looks[i]!.dy} anchor={i === 2 ? 'start' : 'middle'}>{`${name} ${u.say(amount)}`}</Words>)}
        <Words x={start[0] - 14} y={start[1] + 5} anchor="end">start</Words>
        <Words x={0} y={20} strong>{`left: ${u.say(here.amount)}`}</Words>
      </Sheet>
      <label class="small no-print">Turn the clutch cover <input type="range" min="-180" max="180" step="5" value={degrees} aria-valuetext={told} onInput={(e) => turn(deg(Number(e.currentTarget.value)))} /></label>
      <p class="readout">{told}</p>
    </>
  )
}

export default figure<Data>({
  title: 'Three small unbalances laid end to end',
  moves: true,
  from,
  summary(data, system) {
    const u = shown(unbalance, system), f = shown(unbalanceForce, system), s = shown(shaftSpeed, system)
    const matched = left(data, data.parts[turned]!.angle), wrong = left(data, data.parts[0]!.angle)
    return `Three invented parts. With the cover opposite the flywheel’s heavy spot they leave ${u.say(matched.amount)}; put on half a turn round, ${u.say(wrong.amount)}, ${f.say(wrong.force)} at ${s.say(data.speed)}. Nothing was added or taken away: the thick line from the first start to the last end is what the bearings feel.`
  },
  Picture,
  table(data, system) {
    const u = shown(unbalance, system), f = shown(unbalanceForce, system), a = shown(unbalanceAngle, system)
    return { head: [a.head('Cover at'), u.head('Unbalance left'), f.head('Force')], rows: [-180, -135, -90, -45, 0, 45, 90, 135].map((at) => { const here = left(data, deg(at)); return [String(at), writeNumber(u.of(here.amount)), writeNumber(f.of(here.force))] }) }
  },
})
