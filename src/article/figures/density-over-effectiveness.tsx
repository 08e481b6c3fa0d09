import { cooledTemperature } from '@trochoid/compute/boost/cooledTemperature.ts'
import chargeCooler from '@trochoid/compute/boost/chargeCooler.calc.ts'
import { effectiveness as effectivenessOf } from '@trochoid/compute/boost/quantities.ts'
import { gasDensity as densityAt } from '@trochoid/compute/engine/gasDensity.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { effectiveness: number; free: number; paid: number }
type Data = { all: Here[]; here: Here | null; loss: number }

/** Air for each charge against a charge that is not cooled at all, at one pressure out of the compressor. */
function from(build: Build): Data {
  const { given, at } = asked(chargeCooler, build), x = at()
  const inlet = given('inlet'), coolant = given('coolant'), manifold = given('manifold'), loss = x?.['loss'] ?? 0
  const bare = densityAt({ pressure: manifold + loss, temperature: inlet })
  const of = (effectiveness: number): Here => {
    const temperature = cooledTemperature({ inlet, effectiveness, coolant })
    return { effectiveness, free: densityAt({ pressure: manifold + loss, temperature }) / bare, paid: densityAt({ pressure: manifold, temperature }) / bare }
  }
  return { all: steps(0, 0.95, 19).map(of), here: x ? of(x['effectiveness']!) : null, loss: loss / (manifold + loss) }
}

export default figure<Data>({
  title: 'What cooling is worth in density, and what its loss takes back',
  from,
  summary({ here, loss }, system) {
    if (!here) return 'The charge cooler of this build is not known, so nothing is drawn.'
    const e = shown(effectivenessOf, system)
    return `Against the same pressure with no cooler. At ${e.say(here.effectiveness)} this cooler makes the charge ${writeNumber(here.free)} times as dense by temperature; the way through costs ${writeNumber(100 * loss, 2)}\u202f% of the pressure, which leaves ${writeNumber(here.paid)} times. A cooler that does little and restricts much ends below one.`
  },
  Picture({ data: { all, here }, system }) {
    const e = shown(effectivenessOf, system), over = (of: 'free' | 'paid'): Spot[] => all.map((h) => [e.of(h.effectiveness), h[of]])
    return <Curves says="Density of the charge against one without a cooler, over effectiveness, with and without the cooler’s pressure loss." x={e.head()} y="Density against no cooler"
      lines={[{ name: 'by temperature alone', class: 'line two', dash: long, spots: over('free') }, { name: 'with the loss of this cooler', class: 'line', spots: over('paid') }]}
      marks={here ? [{ at: [e.of(here.effectiveness), here.paid], says: 'this build', to: 'under' }] : []} />
  },
  table({ all }, system) {
    const e = shown(effectivenessOf, system)
    return { head: [e.head(), 'By temperature', 'With the loss'], rows: all.filter((_, i) => i % 2 === 0).map((h) => [writeNumber(e.of(h.effectiveness), 2), writeNumber(h.free), writeNumber(h.paid)]) }
  },
})
