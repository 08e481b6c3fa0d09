import actuatorPressures from '@trochoid/compute/boost/actuatorPressures.calc.ts'
import { actuatorPressure, keptShare } from '@trochoid/compute/boost/quantities.ts'
import { percent } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { share: number; one: number; two: number }
type Data = { all: Here[]; cracking: number; boost: number | null }

function from(build: Build): Data {
  const { at } = asked(actuatorPressures, build)
  const here = (share: number): Here | null => {
    const x = at({ kept: share, closing: share })
    return x && { share, one: x['onePort']!, two: x['twoPorts']! }
  }
  return { all: each(steps(0, percent(70), 14), here), cracking: at()?.['cracking'] ?? 0, boost: build.point['boost.boost'] ?? null }
}

export default figure<Data>({
  title: 'Boost at which the valve begins to lift, over what the control valve does',
  from,
  summary({ all, cracking, boost }, system) {
    const p = shown(actuatorPressure, system), k = shown(keptShare, system), last = all.at(-1)
    if (!last || cracking <= 0) return 'Exhaust alone lifts this valve, or the actuator is not known, so there is no band to draw.'
    return `At nothing the valve lifts at ${p.say(cracking)}: lower than that boost cannot be held. With ${k.say(last.share, 2)} of the boost kept from the only port it lifts at ${p.say(last.one)}; with the same share sent to the second, closing port at ${p.say(last.two)}. ${boost === null ? '' : `This build runs ${p.say(boost)}. `}The exhaust’s push is held as it is at full power; more boost raises it, and the true lines bend down.`
  },
  Picture({ data: { all, boost }, system }) {
    if (all.length < 2) return null
    const p = shown(actuatorPressure, system), k = shown(keptShare, system), over = (of: 'one' | 'two'): Spot[] => all.map((h) => [k.of(h.share), p.of(h[of])])
    return <Curves says="Boost at first lift over the share handled by the control valve, with one port and with two." x={k.head('Share of boost kept away, or put on the closing side')} y={p.head('Boost at first lift')} reach={[0]}
      lines={[{ name: 'One port, share kept away', class: 'line', spots: over('one') }, { name: 'Two ports, share on the closing side', class: 'line two', dash: long, spots: over('two') }]}
      levels={level('Boost of this build', 'line dash', [0, k.of(all.at(-1)!.share)], boost === null ? null : p.of(boost))} />
  },
  table({ all }, system) {
    const p = shown(actuatorPressure, system), k = shown(keptShare, system)
    return { head: [k.head('Share'), p.head('One port'), p.head('Two ports')], rows: all.filter((_, i) => i % 2 === 0).map((h) => [writeNumber(k.of(h.share)), writeNumber(p.of(h.one)), writeNumber(p.of(h.two))]) }
  },
})
