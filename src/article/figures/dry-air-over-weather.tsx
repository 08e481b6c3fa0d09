import { airDensity } from '@trochoid/compute/media/quantities.ts'
import { airTemperature } from '@trochoid/compute/engine/quantities.ts'
import moistAir from '@trochoid/compute/engine/moistAirAndDensityAltitude.calc.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { temperature: number; dry: number; half: number; full: number }
type Data = { all: Here[]; here: { temperature: number; density: number } | null; pressure: number }

function from(build: Build): Data {
  const { given, at } = asked(moistAir, build)
  const dry = (airTemperature: number, humidity: number): number | undefined => at({ airTemperature, humidity })?.['dryDensity']
  const of = (temperature: number): Here | null => {
    const none = dry(temperature, 0), half = dry(temperature, 0.5), full = dry(temperature, 1)
    return none === undefined || half === undefined || full === undefined ? null : { temperature, dry: none, half, full }
  }
  const density = at()?.['dryDensity']
  return { all: each(steps(degC(-10), degC(45), 22), of), here: density === undefined ? null : { temperature: given('airTemperature'), density }, pressure: given('airPressure') }
}

export default figure<Data>({
  title: 'Dry air in a cubic metre, over the weather',
  from,
  summary({ all, here }, system) {
    const cold = all[0], warm = all.at(-1)
    if (!cold || !warm || !here) return 'The air of this build could not be worked out, so nothing is drawn.'
    const t = shown(airTemperature, system), d = shown(airDensity, system)
    return `At the pressure the build sheet gives. From ${t.say(cold.temperature)} to ${t.say(warm.temperature)} dry air thins from ${d.say(cold.dry)} to ${d.say(warm.dry)}. Damp hardly counts in the cold; at ${t.say(warm.temperature)} air full of water holds ${writeNumber(100 * (1 - warm.full / warm.dry), 2)}\u202f% less to burn with. The build’s own air has ${d.say(here.density)}.`
  },
  Picture({ data: { all, here }, system }) {
    if (all.length < 2) return null
    const t = shown(airTemperature, system), d = shown(airDensity, system)
    const over = (of: 'dry' | 'half' | 'full'): Spot[] => all.map((x) => [t.of(x.temperature), d.of(x[of])])
    return <Curves says="Density of the dry part of the air over temperature, dry, at half and at full humidity." x={t.head('Air temperature')} y={d.head('Dry air')}
      lines={[{ name: 'Dry', class: 'line', spots: over('dry') }, { name: 'Half full of water', class: 'line dash', spots: over('half') }, { name: 'Full of water', class: 'line two', dash: long, spots: over('full') }]}
      marks={here ? [{ at: [t.of(here.temperature), d.of(here.density)], says: 'this build', to: 'above' }] : []} />
  },
  table({ all }, system) {
    const t = shown(airTemperature, system), d = shown(airDensity, system)
    return { head: [t.head('Air temperature'), d.head('Dry'), d.head('Half full'), d.head('Full')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(t.of(x.temperature), 2), ...[x.dry, x.half, x.full].map((v) => writeNumber(d.of(v)))]) }
  },
})
