import { preloadChange, warming as warmingOf } from '@trochoid/compute/driveline/quantities.ts'
import thermalPreload from '@trochoid/compute/driveline/thermalPreload.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { begins } from './begins.ts'
import { figure } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { warming: number; stack: number; iron: number }
type Data = { all: Here[]; stands: Here }

function from(): Data {
  const { given, at: answer } = begins(thermalPreload)
  const at = (warming: number): Here => ({ warming, stack: answer({ warming })['change']!, iron: answer({ warming, aluminium: 0, iron: given('aluminium') + given('iron') })['change']! })
  return { all: steps(-40, 120, 16).map(at), stands: at(given('warming')) }
}

export default figure<Data>({
  title: 'Preload gained by a tension bolt as the stack warms',
  from,
  summary({ all, stands }, system) {
    const f = shown(preloadChange, system), t = shown(warmingOf, system), cold = all[0]!
    return `An invented stack of aluminium and iron on one long steel bolt gains ${f.say(stands.stack)} when all of it is ${t.say(stands.warming)} warmer than at assembly, and loses ${f.say(-cold.stack)} at ${t.say(-cold.warming)} below. A stack of iron alone would hardly change: ${f.say(stands.iron)}. While the engine warms up the aluminium is hotter than its bolts, and the true figure lies above the line.`
  },
  Picture({ data: { all, stands }, system }) {
    const f = shown(preloadChange, system), t = shown(warmingOf, system)
    const over = (of: 'stack' | 'iron'): Spot[] => all.map((h) => [t.of(h.warming), f.of(h[of])])
    return <Curves says="Change of preload over warming, for aluminium and iron and for iron alone." x={t.head('Warmer than at assembly')} y={f.head()}
      lines={[{ name: 'Aluminium and iron', class: 'line', spots: over('stack') }, { name: 'Iron alone', class: 'line two', dash: long, spots: over('iron') }]}
      marks={[{ at: [t.of(stands.warming), f.of(stands.stack)], says: 'warm', to: 'left' }]} />
  },
  table({ all }, system) {
    const f = shown(preloadChange, system), t = shown(warmingOf, system)
    return { head: [t.head('Warmer by'), f.head('Aluminium and iron'), f.head('Iron alone')], rows: all.filter((_, i) => i % 2 === 0).map((h) => [writeNumber(t.of(h.warming)), writeNumber(f.of(h.stack)), writeNumber(f.of(h.iron))]) }
  },
})
