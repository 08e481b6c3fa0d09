import flywheelInertia from '@trochoid/compute/driveline/flywheelInertia.calc.ts'
import { inertia, ringMass } from '@trochoid/compute/driveline/quantities.ts'
import { ringInertia } from '@trochoid/compute/driveline/ringInertia.ts'
import { ringMassOf } from '@trochoid/compute/driveline/ringMassOf.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure } from './figure.ts'
import { round, Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Ring = { name: string; outer: number; inner: number; thickness: number; mass: number; inertia: number }
type Data = { rings: Ring[]; mass: number; inertia: number }

/** The flywheel that its calculator begins with: no sheet states rings. */
function from(): Data {
  const { given } = begins(flywheelInertia)
  const rings = (['rim', 'web', 'hub'] as const).map((part): Ring => {
    const ring = { density: given('density'), outer: given(`${part}Outer`), inner: given(`${part}Inner`), thickness: given(`${part}Thickness`) }
    return { name: part, ...ring, mass: ringMassOf(ring), inertia: ringInertia(ring) }
  })
  const sum = (of: 'mass' | 'inertia'): number => rings.reduce((all, ring) => all + ring[of], 0)
  return { rings, mass: sum('mass'), inertia: sum('inertia') }
}

const high = 250, foot = 290, left = 40
const share = (part: number, whole: number): string => `${writeNumber((100 * part) / whole, 2)}\u202f%`

export default figure<Data>({
  title: 'Where a flywheel’s mass sits and where its inertia',
  from,
  summary({ rings, mass, inertia: whole }, system) {
    const m = shown(ringMass, system), j = shown(inertia, system), rim = rings[0]!
    return `Half of an invented steel flywheel in section, its axis below: ${m.say(mass)} and ${j.say(whole)} in all. The rim has ${share(rim.mass, mass)} of the mass and ${share(rim.inertia, whole)} of the inertia. Metal taken from the hub makes the part lighter to carry and changes little else.`
  },
  Picture({ data: { rings, mass, inertia: whole }, system }) {
    const m = shown(ringMass, system), j = shown(inertia, system)
    const scale = high / (rings[0]!.outer / 2)
    const widest = Math.max(...rings.map(({ thickness }) => thickness))
    return (
      <Sheet says="Half section of a flywheel with the shares of mass and inertia of rim, web and hub." height={310}>
        <line class="cross" x1="0" x2="636" y1={foot} y2={foot} />
        {rings.map((ring) => {
          const top = foot - (ring.outer / 2) * scale, tall = ((ring.outer - ring.inner) / 2) * scale
          const x = 190, middle = top + tall / 2
          return (
            <g key={ring.name}>
              <rect class="area" x={round(left + (widest - ring.thickness) * scale)} width={round(ring.thickness * scale)} y={round(top)} height={round(tall)} />
              <rect class="line" x={round(left + (widest - ring.thickness) * scale)} width={round(ring.thickness * scale)} y={round(top)} height={round(tall)} />
              <text class="strong" x={x - 60} y={round(middle + 5)}>{ring.name}</text>
              <rect class="fill" x={x} width={round(220 * (ring.mass / mass))} y={round(middle - 22)} height="14" />
              <text x={round(x + 8 + 220 * (ring.mass / mass))} y={round(middle - 9)}>{`mass ${share(ring.mass, mass)}, ${m.say(ring.mass)}`}</text>
              <rect class="fill-accent" x={x} width={round(220 * (ring.inertia / whole))} y={round(middle + 5)} height="14" />
              <text x={round(x + 8 + 220 * (ring.inertia / whole))} y={round(middle + 18)}>{`inertia ${share(ring.inertia, whole)}, ${j.say(ring.inertia)}`}</text>
            </g>
          )
        })}
        <text x="636" y={foot + 16} text-anchor="end">axis of the shaft</text>
      </Sheet>
    )
  },
  table({ rings, mass, inertia: whole }, system) {
    const m = shown(ringMass, system), j = shown(inertia, system)
    return { head: ['Ring', m.head('Mass'), 'Share of mass', j.head('Inertia'), 'Share of inertia'], rows: rings.map((ring) => [ring.name, writeNumber(m.of(ring.mass)), share(ring.mass, mass), writeNumber(j.of(ring.inertia)), share(ring.inertia, whole)]) }
  },
})
