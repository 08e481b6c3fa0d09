import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { deg } from '@trochoid/compute/quantity/si.ts'
import { pulseWidth } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Row = { name: string; angle: number; rotary: boolean }
type Data = { speed: number } | null
const rows: readonly Row[] = [
  { name: 'Rotary: one stroke of a chamber', angle: deg(270), rotary: true },
  { name: 'Four-stroke piston: one stroke', angle: deg(180), rotary: false },
  { name: 'Rotary: charge to charge', angle: deg(360), rotary: true },
  { name: 'Four-stroke piston: charge to charge', angle: deg(720), rotary: false },
  { name: 'Rotary: all four strokes of a chamber', angle: deg(1080), rotary: true },
]

export default figure<Data>({
  title: 'How long things take, at the speed of greatest power',
  from: ({ point }) => (point['engine.speed'] === undefined ? null : { speed: point['engine.speed'] }),
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, so nothing is drawn.'
    const t = shown(pulseWidth, system)
    return `At ${shown(shaftSpeed, system).say(data.speed)}. A chamber has half as long again for each stroke as a cylinder at the same shaft speed, ${t.say(rows[0]!.angle / data.speed)} against ${t.say(rows[1]!.angle / data.speed)}. A rotor takes charges twice as often as a cylinder, so what serves it once a charge, injector and spark, has half the time.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const t = shown(pulseWidth, system)
    return <Bars says="Times of a stroke and between charges, rotary against a four-stroke piston engine at one shaft speed." named={[{ name: 'Rotary', class: 'fill-accent' }, { name: 'Four-stroke piston', class: 'fill' }]}
      rows={rows.map(({ name, angle, rotary }) => ({ name, says: t.say(angle / data.speed), parts: [{ of: t.of(angle / data.speed), class: rotary ? 'fill-accent' : 'fill' }] }))} />
  },
  table(data, system) {
    const t = shown(pulseWidth, system)
    return { head: ['What', 'Shaft angle, °', t.head('Time')], rows: (data ? rows : []).map(({ name, angle }) => [name, String(Math.round((angle * 180) / Math.PI)), writeNumber(t.of(angle / data!.speed))]) }
  },
})
