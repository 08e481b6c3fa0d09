import boltPreload from '@trochoid/compute/driveline/boltPreload.calc.ts'
import { boltPreload as preloadOf, boltTorque, tighteningMethod } from '@trochoid/compute/driveline/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Here = { method: string; least: number; most: number }
type Data = { torque: number; preload: number; proof: number; all: Here[] }

function from(): Data {
  const { given, at } = begins(boltPreload)
  const first = at()
  return {
    torque: given('torque'), preload: first['preload']!, proof: first['most']! / first['used']!,
    all: Object.entries(tighteningMethod.choices).map(([method, name]) => {
      const here = at({ method })
      return { method: name, least: here['least']!, most: here['most']! }
    }),
  }
}

export default figure<Data>({
  title: 'Between which preloads a bolt may end, by the way it was tightened',
  from,
  summary({ torque, preload, proof, all }, system) {
    const f = shown(preloadOf, system), first = all[0]!, last = all.at(-1)!
    return `An M10 bolt meant to have ${f.say(preload)}, what ${shown(boltTorque, system).say(torque)} gives at the mean. With a ${first.method} it may have ${f.say(first.least)} to ${f.say(first.most)}; with ${last.method} ${f.say(last.least)} to ${f.say(last.most)}. It bears ${f.say(proof)} with no lasting stretch. The wrench repeats well; friction does not.`
  },
  Picture({ data: { proof, all }, system }) {
    const f = shown(preloadOf, system)
    return <Bars says="Range of preload for six ways of tightening, against the proof load." limit={{ at: f.of(proof), says: 'proof load' }}
      rows={all.map((h) => ({ name: h.method.charAt(0).toUpperCase() + h.method.slice(1), says: `${writeNumber(f.of(h.least))} to ${f.say(h.most)}`, from: f.of(h.least), parts: [{ of: f.of(h.most) - f.of(h.least), class: 'fill-accent' }] }))} />
  },
  table({ all }, system) {
    const f = shown(preloadOf, system)
    return { head: ['Way of tightening', f.head('Least'), f.head('Most')], rows: all.map((h) => [h.method, writeNumber(f.of(h.least)), writeNumber(f.of(h.most))]) }
  },
})
