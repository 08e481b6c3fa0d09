import { heatFlow, surfaceTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import surfaceLoss from '@trochoid/compute/cooling/surfaceLoss.calc.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { surface: number; radiated: number; bright: number; convected: number }
type Data = { all: Here[]; here: { surface: number; heat: number } | null }

/** Emissivity of a bright metal shield or coating: what is taken for it where the figure draws one. */
const bright = 0.2

function from(build: Build): Data {
  const { given, at } = asked(surfaceLoss, build)
  const of = (surface: number): Here | null => {
    const dull = at({ surface }), shiny = at({ surface, emissivity: bright })
    return dull && shiny ? { surface, radiated: dull['radiated']!, bright: shiny['radiated']!, convected: dull['convected']! } : null
  }
  const heat = at()?.['heat']
  return { all: each(steps(degC(100), degC(900), 16), of), here: heat === undefined ? null : { surface: given('surface'), heat } }
}

export default figure<Data>({
  title: 'What a hot part gives to the bay, radiated and carried off',
  from,
  summary({ all, here }, system) {
    const low = all.find(({ radiated, convected }) => radiated > convected), last = all.at(-1)
    if (!last || !here) return 'The part could not be worked out, so nothing is drawn.'
    const t = shown(surfaceTemperatureOf, system), q = shown(heatFlow, system)
    return `For the surface of the calculator beneath. ${low ? `From about ${t.say(low.surface)} on it radiates more than air carries off. ` : ''}At ${t.say(last.surface)} it radiates ${q.say(last.radiated)}; with a bright skin of emissivity ${bright} it would be ${q.say(last.bright)}, and air still takes ${q.say(last.convected)}.`
  },
  Picture({ data: { all }, system }) {
    if (all.length < 2) return null
    const t = shown(surfaceTemperatureOf, system), q = shown(heatFlow, system)
    const over = (of: 'radiated' | 'bright' | 'convected'): Spot[] => all.map((x) => [t.of(x.surface), q.of(x[of])])
    return <Curves says="Heat radiated by a dull and by a bright surface, and heat carried off by air, over the surface’s temperature." x={t.head('Surface')} y={q.head('Heat')} reach={[0]}
      lines={[{ name: 'Radiated, as it is', class: 'line', spots: over('radiated') }, { name: 'Radiated, bright', class: 'line thin', spots: over('bright') }, { name: 'Carried off by air', class: 'line two', dash: long, spots: over('convected') }]} />
  },
  table({ all }, system) {
    const t = shown(surfaceTemperatureOf, system), q = shown(heatFlow, system)
    return { head: [t.head('Surface'), q.head('Radiated'), q.head('Radiated, bright'), q.head('By air')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(t.of(x.surface)), ...[x.radiated, x.bright, x.convected].map((v) => writeNumber(q.of(v)))]) }
  },
})
