import { boltPreload, boltTorque } from '@trochoid/compute/driveline/quantities.ts'
import torqueOfPreload from '@trochoid/compute/driveline/torqueOfPreload.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Here = { friction: number; lifts: number; thread: number; head: number }
type Data = { preload: number; all: Here[] }

function from(): Data {
  const { given, at } = begins(torqueOfPreload)
  const whole = (thread: number, head: number): number => at({ thread, head })['torque']!
  const lifts = whole(0, 0)
  return { preload: given('preload'), all: [0.08, 0.12, 0.16, 0.2].map((friction) => ({ friction, lifts, thread: whole(friction, 0) - lifts, head: whole(0, friction) - lifts })) }
}
const sum = (h: Here): number => h.lifts + h.thread + h.head

export default figure<Data>({
  title: 'Where the torque goes, for one and the same preload',
  from,
  summary({ preload, all }, system) {
    const m = shown(boltTorque, system), first = all[0]!, last = all.at(-1)!
    return `An M10 bolt brought to ${shown(boltPreload, system).say(preload)}. With friction of ${writeNumber(first.friction, 1)} in thread and under the head it takes ${m.say(sum(first))}, with ${writeNumber(last.friction, 1)} ${m.say(sum(last))}. What stretches the bolt is the same ${m.say(first.lifts)} each time. Read the other way round: one torque on a drier bolt is that much less preload.`
  },
  Picture({ data: { all }, system }) {
    const m = shown(boltTorque, system)
    return <Bars says="Tightening torque for one preload at four frictions, split into lifting, thread and head." named={[{ name: 'stretches the bolt', class: 'fill-accent' }, { name: 'friction in the thread', class: 'fill' }, { name: 'friction under the head', class: 'area' }]}
      rows={all.map((h) => ({ name: `Friction ${writeNumber(h.friction, 2)}`, says: m.say(sum(h)), parts: [{ of: m.of(h.lifts), class: 'fill-accent' }, { of: m.of(h.thread), class: 'fill' }, { of: m.of(h.head), class: 'area' }] }))} />
  },
  table({ all }, system) {
    const m = shown(boltTorque, system)
    return { head: ['Friction of both', m.head('Stretches the bolt'), m.head('Thread'), m.head('Head'), m.head('Torque')], rows: all.map((h) => [writeNumber(h.friction, 2), ...[h.lifts, h.thread, h.head, sum(h)].map((v) => writeNumber(m.of(v)))]) }
  },
})
