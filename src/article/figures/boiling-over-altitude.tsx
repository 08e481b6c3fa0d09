import boilMargin from '@trochoid/compute/cooling/boilMargin.calc.ts'
import { capPressureOf, coolantTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import { geopotentialAltitude } from '@trochoid/compute/media/quantities.ts'
import standardAtmosphere from '@trochoid/compute/engine/standardAtmosphere.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { altitude: number; capped: number; open: number; water: number }
type Data = { all: Here[]; cap: number; coolant: number }

function from(build: Build): Data {
  const air = asked(standardAtmosphere, build), boil = asked(boilMargin, build)
  const here = (altitude: number): Here | null => {
    const outside = air.at({ altitude })?.['pressure']
    const capped = boil.at({ outside })?.['boiling'], open = boil.at({ outside, cap: 0 })?.['boiling'], water = boil.at({ outside, glycol: 0 })?.['boiling']
    return capped === undefined || open === undefined || water === undefined ? null : { altitude, capped, open, water }
  }
  return { all: each(steps(0, 3000, 12), here), cap: boil.given('cap'), coolant: boil.given('coolant') }
}

export default figure<Data>({
  title: 'Where the coolant boils, over altitude',
  from,
  summary({ all, cap, coolant }, system) {
    const first = all[0], last = all.at(-1)
    if (!first || !last) return 'The boiling point of this coolant could not be worked out, so nothing is drawn.'
    const t = shown(coolantTemperatureOf, system), h = shown(geopotentialAltitude, system)
    return `Under a cap of ${shown(capPressureOf, system).say(cap)} the mixture boils at ${t.say(first.capped)} by the sea and at ${t.say(last.capped)} at ${h.say(last.altitude)}; plain water under the same cap at ${t.say(first.water)} and ${t.say(last.water)}. With a cap that does not hold it is ${t.say(first.open)} and ${t.say(last.open)}. The bulk of this build stands at ${t.say(coolant)} where it was judged.`
  },
  Picture({ data: { all, coolant }, system }) {
    if (all.length < 2) return null
    const t = shown(coolantTemperatureOf, system), h = shown(geopotentialAltitude, system)
    const over = (of: 'capped' | 'open' | 'water'): Spot[] => all.map((x) => [h.of(x.altitude), t.of(x[of])])
    const ends = [h.of(0), h.of(all.at(-1)!.altitude)] as const
    return <Curves says="Boiling point over altitude, with the cap, with plain water and with no cap, and the coolant’s own temperature." x={h.head()} y={t.head('Temperature')}
      lines={[{ name: 'Mixture under the cap', class: 'line', spots: over('capped') }, { name: 'Plain water under the cap', class: 'line thin', spots: over('water') }, { name: 'Mixture, cap open', class: 'line two', dash: long, spots: over('open') }]}
      levels={level('Bulk of the coolant', 'line dash', ends, t.of(coolant))} />
  },
  table({ all }, system) {
    const t = shown(coolantTemperatureOf, system), h = shown(geopotentialAltitude, system)
    return { head: [h.head(), t.head('Under the cap'), t.head('Water under the cap'), t.head('Cap open')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(h.of(x.altitude)), ...[x.capped, x.water, x.open].map((v) => writeNumber(t.of(v)))]) }
  },
})
