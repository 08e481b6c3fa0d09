import { boostShare, responseTime } from '@trochoid/compute/boost/quantities.ts'
import { boostPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'
import { secondsUntil, stepOf } from './response.ts'

type Moment = { time: number; boost: number }
type Data = { shaft: number; wanted: number; own: Moment[]; larger: Moment[] }

const shares = [0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 0.97]
/** Flow of the larger one over that of the build's own; its inertia goes with the fifth power of size, so with flow to two and a half. */
const larger = 1.3

function from(build: Build): Data {
  const step = stepOf(build)
  const shaft = step['shaft'] as number
  const wanted = step['boost'] as number
  const course = (times: number): Moment[] => shares.flatMap((share) => {
    const time = secondsUntil(step, { share, inertia: (step['inertia'] as number) * times ** 2.5, flowCapacity: (step['flowCapacity'] as number) * times })
    return time === null ? [] : [{ time, boost: share * wanted }]
  })
  return { shaft, wanted, own: course(1), larger: course(larger) }
}

export default figure<Data>({
  title: 'Boost after the throttle opens, with this turbocharger and a larger one',
  from,
  summary({ shaft, wanted, own, larger: big }, system) {
    const s = shown(shaftSpeed, system), t = shown(responseTime, system), b = shown(boostPressure, system)
    if (own.length < 2) return 'With this build’s turbocharger the wanted boost does not come at this speed, so nothing is drawn.'
    const to = (line: readonly Moment[]): Moment | undefined => line.find((m) => m.boost >= 0.9 * wanted * (1 - 1e-9))
    const mine = to(own), theirs = to(big)
    return `The throttle opens at ${s.say(shaft)} and ${b.say(wanted)} is wanted. ${mine ? `This turbocharger has nine tenths of it after ${t.say(mine.time)}` : 'This turbocharger does not reach nine tenths of it'}; one for ${writeNumber(100 * (larger - 1), 2)}\u202f% more flow, with a turbine wider by as much and wheels of one shape, ${theirs ? `after ${t.say(theirs.time)}` : 'does not reach it at this speed'}. Both turn equally fast to begin with, on the same compressor map, so the difference is turbine and inertia alone.`
  },
  Picture({ data: { own, larger: big }, system }) {
    const t = shown(responseTime, system), b = shown(boostPressure, system)
    const spots = (line: readonly Moment[]): Spot[] => [[0, 0], ...line.map((m): Spot => [t.of(m.time), b.of(m.boost)])]
    if (own.length < 2) return null
    return <Curves says="Boost over the time since the throttle opened, for two turbochargers." x={t.head('Time since the throttle opened')} y={b.head()} reach={[0]}
      lines={[{ name: 'This turbocharger', class: 'line', spots: spots(own) }, { name: 'a larger one', class: 'line two', dash: long, spots: spots(big) }]} />
  },
  table({ wanted, own, larger: big }, system) {
    const t = shown(responseTime, system), b = shown(boostPressure, system), share = shown(boostShare, system)
    const when = (line: readonly Moment[], of: number): string => { const m = line.find((one) => Math.abs(one.boost - of * wanted) < 1e-6 * wanted); return m ? writeNumber(t.of(m.time)) : 'does not come' }
    return { head: [b.head(), t.head('This turbocharger'), t.head('A larger one')], rows: shares.map((of) => [`${writeNumber(b.of(of * wanted))} (${share.say(of, 2)})`, when(own, of), when(big, of)]) }
  },
})
