import { clutchTorque } from '@trochoid/compute/driveline/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; asked: number; held: number }
type Data = { all: Here[]; worst: Here | null }

const from = ({ solved }: Build): Data => {
  const all = solved.points.flatMap(({ speed, values }): Here[] => {
    const asked = values['engine.torque'], held = values['driveline.clutchCapacity']
    return asked === undefined || held === undefined ? [] : [{ speed, asked, held }]
  })
  return { all, worst: all.reduce<Here | null>((a, h) => (a === null || h.held / h.asked < a.held / a.asked ? h : a), null) }
}

export default figure<Data>({
  title: 'What the engine asks and what the clutch holds',
  from,
  summary({ all, worst }, system) {
    if (!worst) return 'This build has no full-throttle point with a clutch to hold it, so nothing is drawn.'
    const s = shown(shaftSpeed, system), m = shown(clutchTorque, system)
    const falls = all[0]!.held - all.at(-1)!.held
    return `The two come closest at ${s.say(worst.speed)}: the engine asks ${m.say(worst.asked)}, the clutch holds ${m.say(worst.held)}, ${writeNumber(worst.held / worst.asked)} times as much. ${falls > 0 ? `Speed throws the spring’s fingers outward and takes ${m.say(falls)} over the sweep, most of it at the top.` : 'A slip torque measured on the car stands level: speed and wear were in it.'} Every line here is steady: a clutch dumped at speed sees more than either.`
  },
  Picture({ data: { all, worst }, system }) {
    if (all.length < 2 || !worst) return null
    const s = shown(shaftSpeed, system), m = shown(clutchTorque, system)
    const over = (of: 'asked' | 'held'): Spot[] => all.map((h) => [s.of(h.speed), m.of(h[of])])
    return <Curves says="Engine torque and what the clutch holds over shaft speed." x={s.head()} y={m.head('Torque')} reach={[0]}
      lines={[{ name: 'Clutch holds', class: 'line', spots: over('held') }, { name: 'Engine asks', class: 'line two', dash: long, spots: over('asked') }]}
      uprights={[{ at: s.of(worst.speed), says: 'least to spare' }]} />
  },
  table({ all }, system) {
    const s = shown(shaftSpeed, system), m = shown(clutchTorque, system)
    return { head: [s.head(), m.head('Engine asks'), m.head('Clutch holds'), 'Holds over asks'], rows: all.filter((_, i) => i % 4 === 0).map((h) => [writeNumber(s.of(h.speed)), writeNumber(m.of(h.asked)), writeNumber(m.of(h.held)), writeNumber(h.held / h.asked)]) }
  },
})
