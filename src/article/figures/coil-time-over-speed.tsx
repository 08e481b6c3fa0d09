import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { rpm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import coilCharge from '@trochoid/compute/spark/coilCharge.calc.ts'
import { chargeTime, coilVoltage } from '@trochoid/compute/spark/quantities.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; own: number; shared: number }
type Data = { all: Here[]; speed: number; needs: readonly (readonly [voltage: number, time: number | null])[] }

function from(build: Build): Data {
  const { given, at } = asked(coilCharge, build), speed = given('speed')
  const window = (n: number, layout: string): number => at({ speed: n, layout, current: 0.1 })?.['window'] ?? NaN
  return {
    speed,
    all: steps(rpm(2000), rpm(10000), 16).map((n) => ({ speed: n, own: window(n, 'own'), shared: window(n, 'shared') })),
    needs: [given('voltage'), 11].map((voltage) => [voltage, at({ voltage })?.['time'] ?? null] as const),
  }
}

export default figure<Data>({
  title: 'Time a coil needs, and time it has',
  from,
  summary({ all, needs: [now, low] }, system) {
    const t = shown(chargeTime, system), u = shown(coilVoltage, system), n = shown(shaftSpeed, system), last = all.at(-1)!
    const need = ([voltage, time]: readonly [number, number | null]): string => (time === null ? `never gets there at ${u.say(voltage)}` : `needs ${t.say(time)} at ${u.say(voltage)}`)
    return `At ${n.say(last.speed)} a coil of its own has ${t.say(last.own)} from the end of one spark to the next, a shared one ${Number.isFinite(last.shared) ? t.say(last.shared) : 'no time at all'}. The coil of this build ${need(now!)} and ${need(low!)}. Where a falling line crosses a level one the coil fires before it is full.`
  },
  Picture({ data: { all, speed, needs }, system }) {
    const t = shown(chargeTime, system), u = shown(coilVoltage, system), n = shown(shaftSpeed, system)
    const over = (of: 'own' | 'shared'): Spot[] => all.flatMap((x): Spot[] => (Number.isFinite(x[of]) ? [[n.of(x.speed), t.of(x[of])]] : []))
    const ends = [n.of(all[0]!.speed), n.of(all.at(-1)!.speed)] as const
    return <Curves says="Time between sparks over shaft speed for a coil of its own and a shared one, with the charge time this coil needs at two voltages." x={n.head()} y={t.head('Time')} reach={[0]}
      lines={[{ name: 'Coil of its own: time it has', class: 'line', spots: over('own') }, { name: 'Shared coil: time it has', class: 'line two', dash: long, spots: over('shared') }]}
      levels={needs.flatMap(([voltage, time], i) => (time === null ? [] : [{ name: `Needed at ${u.say(voltage)}`, class: i === 0 ? 'line thin' : 'line dash', spots: [[ends[0], t.of(time)], [ends[1], t.of(time)]] as Spot[] }]))}
      uprights={[{ at: n.of(speed), says: 'most power', top: true }]} />
  },
  table({ all }, system) {
    const t = shown(chargeTime, system), n = shown(shaftSpeed, system)
    const cell = (value: number): string => (Number.isFinite(value) ? writeNumber(t.of(value)) : 'none')
    return { head: [n.head(), t.head('Of its own'), t.head('Shared')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(n.of(x.speed)), cell(x.own), cell(x.shared)]) }
  },
})
