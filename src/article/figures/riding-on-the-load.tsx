import { filmSpeed } from '@trochoid/compute/oil/filmSpeed.ts'
import { bearingSpeed } from '@trochoid/compute/oil/quantities.ts'
import { rotorTurning } from '@trochoid/compute/oil/rotorTurning.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { round, Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Case = { says: string; why: string; load: number; makes: number }
type Data = { speed: number; shell: number; cases: Case[] } | null

const left = 250, zero = 360, unit = 150, step = 168

/** Surface speeds as they look to somebody who rides on the load, where the film stands still. */
export default figure<Data>({
  title: 'What drags oil in, seen by a rider on the load',
  from({ point }) {
    const speed = point['engine.speed']
    if (!speed) return null
    const shell = rotorTurning({ speed })
    const of = (says: string, why: string, load: number): Case => ({ says, why, load, makes: filmSpeed({ journal: speed, shell, load }) })
    return { speed, shell, cases: [of('Inertia', 'The load turns with the shaft', speed), of('Gas peak', 'The load stands still', 0), of('No film', 'A load that turned at the mean of both', (speed + shell) / 2)] }
  },
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, so nothing is drawn.'
    const n = shown(bearingSpeed, system)
    const [inertia, gas] = data.cases as [Case, Case]
    return `Shaft at ${n.say(data.speed)}, rotor shell at a third of it. To a rider on the inertia load the journal stands still and the shell slides back: ${n.say(inertia.makes)} make the film. To a rider on the gas load both run forward: ${n.say(gas.makes)}. A load turning at the mean of both would see one surface bring as much oil as the other takes away, and no film would form; neither load of this engine does that steadily.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const n = shown(bearingSpeed, system)
    const long = (v: number): number => round((v / data.speed) * unit)
    return (
      <Sheet says="Bars for the speed of journal and shell past the load in three cases, and their sum." height={step * 3 + 8}>
        {data.cases.map((c, i) => (
          <g key={c.says}>
            <text class="strong" x="0" y={i * step + 24}>{c.says}</text>
            <text x="0" y={i * step + 50}>{c.why}</text>
            {([['Journal', data.speed - c.load], ['Shell', data.shell - c.load]] as const).map(([name, v], j) => (
              <g key={name}>
                <text x={left - 20} y={i * step + 88 + 34 * j} text-anchor="end">{name}</text>
                <rect class={j === 0 ? 'fill' : 'fill-accent'} opacity=".6" x={v < 0 ? zero + long(v) : zero} y={i * step + 72 + 34 * j} width={Math.max(1, Math.abs(long(v)))} height="20" />
                <text x={zero + unit + 14} y={i * step + 88 + 34 * j}>{n.say(v)}</text>
              </g>
            ))}
            <line class="axis" x1={zero} x2={zero} y1={i * step + 64} y2={i * step + 134} />
            <text class="strong" x="640" y={i * step + 24} text-anchor="end">makes {n.say(c.makes)}</text>
          </g>
        ))}
      </Sheet>
    )
  },
  table(data, system) {
    const n = shown(bearingSpeed, system)
    return {
      head: ['Case', n.head('Journal past load'), n.head('Shell past load'), n.head('Makes the film')],
      rows: (data?.cases ?? []).map((c) => [c.says, writeNumber(n.of(data!.speed - c.load)), writeNumber(n.of(data!.shell - c.load)), writeNumber(n.of(c.makes))]),
    }
  },
})
