import { useState } from 'preact/hooks'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { chamberVolume } from '@trochoid/compute/engine/chamberVolume.ts'
import { engineEccentricity, engineGeneratingRadius, engineShift, engineWidth } from '@trochoid/compute/engine/fields.ts'
import { chamberVolume as chamberVolumeOf } from '@trochoid/compute/engine/quantities.ts'
import { deg } from '@trochoid/compute/quantity/si.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, type Spot } from './plot/Lines.tsx'
import { Axes, round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { chamberAngle, isOpen, ports, stroke } from './rotor/cycle.ts'
import { flank, housing, housingAt, middleAt, wall, type Form } from './rotor/geometry.ts'

type Data = (Form & { width: number }) | null

function from({ sheet }: Build): Data {
  const radius = valueAt(sheet, engineGeneratingRadius), eccentricity = valueAt(sheet, engineEccentricity), shift = valueAt(sheet, engineShift), width = valueAt(sheet, engineWidth)
  return radius === null || eccentricity === null || shift === null || width === null || radius <= 3 * eccentricity ? null : { radius, eccentricity, shift, width }
}

const volume = ({ radius, eccentricity, shift, width }: NonNullable<Data>, shaftAngle: number): number => chamberVolume({ generatingRadius: radius, eccentricity, shift, width, shaftAngle })
const degrees = (angle: number): number => Math.round((angle * 180) / Math.PI)
const names = ['A', 'B', 'C'] as const
const chambers = [0, 1, 2] as const

/** Each chamber has a pattern of its own, so that it is known without its colour. */
const Patterns = () => (
  <defs>
    <pattern id="chamber-A" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="9" height="9" fill="var(--sheet)" /><rect width="4" height="9" fill="var(--accent)" /></pattern>
    <pattern id="chamber-B" width="10" height="10" patternUnits="userSpaceOnUse"><rect width="10" height="10" fill="var(--sheet)" /><circle cx="5" cy="5" r="2.6" fill="var(--ink)" /></pattern>
    <pattern id="chamber-C" width="10" height="10" patternUnits="userSpaceOnUse"><rect width="10" height="10" fill="var(--sheet)" /><path d="M0 5h10M5 0v10" stroke="var(--soft)" stroke-width="1.6" /></pattern>
  </defs>
)

/** Long axis upright, plugs on the right, ports on the left, the rotor turning with the clock. */
function Turned({ data, shaft }: { data: NonNullable<Data>; shaft: number }) {
  const scale = 150 / (data.radius + data.eccentricity + data.shift)
  const spot = ([x, y]: readonly [number, number]): string => `${round(196 + y * scale)} ${round(180 - x * scale)}`
  const path = (of: readonly (readonly [number, number])[]): string => `M${of.map(spot).join('L')}Z`
  const [mx, my] = spot(middleAt(data, shaft)).split(' ').map(Number) as [number, number]
  const tick = (angle: number, out: number): string => {
    const [x, y] = housingAt(data, angle), [fx, fy] = housingAt({ ...data, shift: data.shift + out / scale }, angle)
    return `M${spot([x, y])}L${spot([fx, fy])}`
  }
  // The leading apex uncovers a port, the trailing one covers it.
  const edges = [...Object.values(ports)].map(({ opens, shuts }) => [(5 * Math.PI) / 6 + opens / 3, Math.PI / 6 + shuts / 3] as const)
  const label = (which: number): readonly [number, number] => {
    const outer = wall(data, shaft, which)[18]!, inner = flank(data, shaft, which)[12]!
    return [(outer[0] + inner[0]) / 2, (outer[1] + inner[1]) / 2]
  }
  return (
    <g>
      {chambers.map((i) => <path key={i} fill={`url(#chamber-${names[i]})`} d={path([...wall(data, shaft, i), ...flank(data, shaft, i).reverse()])} />)}
      <path class="line" d={path(housing(data))} />
      <path class="line" fill="var(--paper)" d={path(chambers.flatMap((i) => flank(data, shaft, i)))} />
      <circle class="area" cx={mx} cy={my} r={round(data.radius * 0.42 * scale)} />
      <circle class="thin" cx={mx} cy={my} r={round(data.radius * 0.42 * scale)} />
      <path class="line two" d={`M196 180L${mx} ${my}L${round(196 + (mx - 196) * (data.radius * 0.42 / data.eccentricity + 1))} ${round(180 + (my - 180) * (data.radius * 0.42 / data.eccentricity + 1))}`} />
      <circle class="mark" cx="196" cy="180" r="5" />
      {edges.map(([a, b], i) => <path key={i} class="line" stroke-width="3" d={tick(a, 16) + tick(b, 16)} />)}
      {[-0.22, 0.22].map((by) => <path key={by} class="line two" d={tick(Math.PI / 2 + by, 20)} />)}
      {chambers.map((i) => { const [x, y] = spot(label(i)).split(' ').map(Number) as [number, number]; return <Words key={i} x={x} y={y + 5} anchor="middle" strong>{names[i]!}</Words> })}
    </g>
  )
}

function Picture({ data, system }: { data: Data; system: System }) {
  const [shaft, turn] = useState(deg(120))
  if (!data) return null
  const v = shown(chamberVolumeOf, system)
  const all = chambers.map((i) => ({ name: names[i]!, angle: chamberAngle(shaft, i) })).map((c) => ({ ...c, doing: stroke(c.angle), volume: volume(data, c.angle) }))
  const curve: Spot[] = Array.from({ length: 109 }, (_, i) => [10 * i, v.of(volume(data, deg(10 * i)))])
  const on = frame({ x: [0, 1080], y: [0, Math.max(...curve.map(([, y]) => y))], height: 330 })
  const open = (angle: number): string => [isOpen(angle, ports.exhaust) && 'exhaust open', isOpen(angle, ports.intake) && 'intake open'].filter(Boolean).join(', ')
  const told = `Shaft ${degrees(shaft)}°, rotor ${degrees(shaft / 3)}°. ${all.map((c) => `${c.name}: ${c.doing}, ${v.say(c.volume)}`).join('. ')}.`
  return (
    <>
      <Sheet says={`Rotor in its housing at a shaft angle of ${degrees(shaft)} degrees, with three chambers, and below it the volume of each over shaft angle.`} height={700}>
        <Patterns />
        <Turned data={data} shaft={shaft} />
        <Words x={344} y={185}>plugs</Words>
        <Words x={2} y={120}>intake</Words>
        <Words x={2} y={252}>exhaust</Words>
        {all.map((c, i) => (
          <g key={c.name}>
            <rect stroke="var(--soft)" fill={`url(#chamber-${c.name})`} x="420" y={44 + i * 100} width="40" height="40" />
            <text class="strong" x="470" y={60 + i * 100}>{`${c.name}  ${c.doing}`}</text>
            <text x="470" y={84 + i * 100}>{v.say(c.volume)}</text>
            <text x="470" y={106 + i * 100}>{open(c.angle)}</text>
          </g>
        ))}
        <g transform="translate(0 370)">
          {([['exhaust', 'fill'], ['intake', 'fill-accent']] as const).map(([name, c], i) => <rect key={name} class={c} opacity=".55" x={round(on.x.at(degrees(ports[name].opens)))} width={round(on.x.at(degrees(ports[name].shuts)) - on.x.at(degrees(ports[name].opens)))} y={on.top - 14 + i * 9} height="7" />)}
          <Axes on={on} x="Shaft angle of a chamber, °" y={v.head()} />
          <Lines on={on} of={[{ name: 'volume', class: 'line', spots: curve }]} />
          {(['expansion', 'exhaust', 'intake', 'compression'] as const).map((name, i) => <Words key={name} x={on.x.at(135 + 270 * i)} y={on.bottom - 10} anchor="middle">{name}</Words>)}
          {[270, 540, 810].map((at) => <line key={at} class="grid" x1={on.x.at(at)} x2={on.x.at(at)} y1={on.top} y2={on.bottom} />)}
          {all.map((c) => <g key={c.name}><circle class="mark" cx={round(on.x.at(degrees(c.angle)))} cy={round(on.y.at(v.of(c.volume)))} r="7" /><Words x={on.x.at(degrees(c.angle))} y={on.y.at(v.of(c.volume)) - 13} anchor="middle" strong>{c.name}</Words></g>)}
        </g>
      </Sheet>
      <label class="small no-print">Turn the shaft <input type="range" min="0" max="1080" step="5" value={degrees(shaft)} aria-valuetext={told} onInput={(e) => turn(deg(Number(e.currentTarget.value)))} /></label>
      <p class="readout">{told}</p>
    </>
  )
}

export default figure<Data>({
  title: 'One rotor in its housing, turned by hand',
  moves: true,
  from,
  summary(data, system) {
    if (!data) return 'The radius and eccentricity of this engine are not known or fit no rotor, so nothing is drawn.'
    const v = shown(chamberVolumeOf, system)
    return `Drawn from radius, eccentricity and shift. Each chamber goes from ${v.say(volume(data, 0))} to ${v.say(volume(data, deg(270)))} and back twice in three turns of the shaft; the other two do the same a turn and two turns later. The bars over the curve show when exhaust (dark) and intake are open to it; where both are, that is overlap. Recess and port timing are left out of the outline; the timing is invented, of common size.`
  },
  Picture,
  table(data, system) {
    const v = shown(chamberVolumeOf, system)
    return { head: ['Shaft angle of the chamber, °', 'Stroke', v.head(), 'Open'], rows: (data ? [0, 90, 195, 270, 405, 540, 580, 675, 810, 860, 945, 1080] : []).map((at) => [String(at), stroke(deg(at) % (6 * Math.PI)), writeNumber(v.of(volume(data!, deg(at)))), [isOpen(deg(at), ports.exhaust) && 'exhaust', isOpen(deg(at), ports.intake) && 'intake'].filter(Boolean).join(' and ') || 'nothing']) }
  },
})
