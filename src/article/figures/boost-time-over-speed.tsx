import { responseTime, turboInertia } from '@trochoid/compute/boost/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { rpm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'
import { secondsUntil, stepOf } from './response.ts'

type Line = readonly (number | null)[]
type Data = { speeds: number[]; inertia: number; own: Line; half: Line; twice: Line }

const speeds = steps(rpm(3000), rpm(6500), 7)

function from(build: Build): Data {
  const step = stepOf(build)
  const inertia = step['inertia'] as number
  const line = (times: number): Line => speeds.map((shaft) => secondsUntil(step, { shaft, inertia: times * inertia }))
  return { speeds, inertia, own: line(1), half: line(0.5), twice: line(2) }
}

export default figure<Data>({
  title: 'How long boost takes, over the speed at which the throttle opens',
  from,
  summary({ speeds: at, inertia, own, half, twice }, system) {
    const s = shown(shaftSpeed, system), t = shown(responseTime, system)
    const seen = at.map((speed, i) => ({ speed, own: own[i] ?? null, half: half[i] ?? null, twice: twice[i] ?? null })).filter((p) => p.own !== null)
    const first = seen[0], last = seen.at(-1)
    if (!first || !last || first === last) return 'At none of these speeds does the wanted boost come within twenty seconds, so nothing is drawn.'
    const more = last.twice === null ? '' : ` Twice the inertia makes that ${t.say(last.twice)}`
    const less = last.half === null ? '' : `${more ? ', half of it' : ' Half the inertia makes that'} ${t.say(last.half)}.`
    return `To nine tenths of the wanted boost it takes ${t.say(first.own!)} when the throttle opens at ${s.say(first.speed)} and ${t.say(last.own!)} at ${s.say(last.speed)}, with wheels of ${shown(turboInertia, system).say(inertia)}.${more}${less} Near the threshold, shaft speed matters more than inertia: there is little left over to speed the wheels up.`
  },
  Picture({ data: { speeds: at, own, half, twice }, system }) {
    const s = shown(shaftSpeed, system), t = shown(responseTime, system)
    const spots = (line: Line): Spot[] => at.flatMap((speed, i): Spot[] => (line[i] == null ? [] : [[s.of(speed), t.of(line[i])]]))
    if (spots(own).length < 2) return null
    return <Curves says="Seconds until nine tenths of the boost over the shaft speed at which the throttle opens, for three inertias." x={s.head('Shaft speed as the throttle opens')} y={t.head('Until boost is there')} reach={[0]}
      lines={[{ name: 'These wheels', class: 'line', spots: spots(own) }, { name: 'half the inertia', class: 'line two', spots: spots(half) }, { name: 'twice the inertia', class: 'line dash', dash: long, spots: spots(twice) }]} />
  },
  table({ speeds: at, own, half, twice }, system) {
    const s = shown(shaftSpeed, system), t = shown(responseTime, system)
    const cell = (v: number | null | undefined): string => (v == null ? 'does not come' : writeNumber(t.of(v)))
    return { head: [s.head(), t.head('Half the inertia'), t.head('These wheels'), t.head('Twice the inertia')], rows: at.map((speed, i) => [writeNumber(s.of(speed)), cell(half[i]), cell(own[i]), cell(twice[i])]) }
  },
})
