import { gasFlow } from '@trochoid/compute/boost/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; asked: number; capacity: number }
type Data = Here[]

const from = ({ solved }: Build): Data => solved.points.flatMap(({ speed, values }): Here[] => {
  const asked = values['boost.wastegateFlow'], capacity = values['boost.wastegateCapacity']
  return asked === undefined || capacity === undefined ? [] : [{ speed, asked: Math.max(0, asked), capacity }]
})

export default figure<Data>({
  title: 'What has to go past the turbine, and what the wastegate passes',
  from,
  summary(all, system) {
    const m = shown(gasFlow, system), s = shown(shaftSpeed, system)
    const worst = all.reduce<Here | null>((a, h) => (a === null || h.capacity - h.asked < a.capacity - a.asked ? h : a), null), last = all.at(-1)
    if (!worst || !last) return 'This build has no full-throttle point with a turbine, so nothing is drawn.'
    return `At ${s.say(last.speed)} ${m.say(last.asked)} have to go past, and wide open the valve passes ${m.say(last.capacity)} if the manifold feeds it well. ${worst.asked > worst.capacity ? `At ${s.say(worst.speed)} it falls short by ${m.say(worst.asked - worst.capacity)}: boost creeps there.` : 'Where the lower line touches nothing the valve is shut and boost is still building.'} A branch that turns the gas away from the valve lowers the upper line, by how much nobody can compute.`
  },
  Picture({ data: all, system }) {
    if (all.length < 2) return null
    const m = shown(gasFlow, system), s = shown(shaftSpeed, system), over = (of: 'asked' | 'capacity'): Spot[] => all.map((h) => [s.of(h.speed), m.of(h[of])])
    return <Curves says="Exhaust that must bypass the turbine and what the wastegate passes, over shaft speed." x={s.head()} y={m.head('Flow')} reach={[0]}
      lines={[{ name: 'Wide open it passes', class: 'line', spots: over('capacity') }, { name: 'has to go past', class: 'line two', dash: long, spots: over('asked') }]} />
  },
  table(all, system) {
    const m = shown(gasFlow, system), s = shown(shaftSpeed, system)
    return { head: [s.head(), m.head('Has to go past'), m.head('Wide open')], rows: all.filter((_, i) => i % 4 === 0).map((h) => [writeNumber(s.of(h.speed)), writeNumber(m.of(h.asked)), writeNumber(m.of(h.capacity))]) }
  },
})
