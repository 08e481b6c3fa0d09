import { airCapacityRate } from '@trochoid/compute/cooling/airCapacityRate.ts'
import coolantTemperatureCalculation from '@trochoid/compute/cooling/coolantTemperature.calc.ts'
import { coolantTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import { sustainedHeat } from '@trochoid/compute/cooling/sustainedHeat.ts'
import { warmedOutlet } from '@trochoid/compute/cooling/warmedOutlet.ts'
import oilTemperatureCalculation from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

/** Nothing for the coolant where it boils before the radiator carries its heat. */
type Place = { name: string; oil: number; coolant: number | null }
type Data = { outside: number; behind: number; places: Place[] } | null

function from(build: Build): Data {
  if (build.point['cooling.oilHeat'] === undefined || build.point['cooling.coreAirFlow'] === undefined) return null
  const oil = asked(oilTemperatureCalculation, build), coolant = asked(coolantTemperatureCalculation, build)
  const outside = oil.given('air'), before = coolant.given('airTemperature')
  // The oil's thermostat is left out: what the core can do is asked.
  const settles = (air: number) => oil.at({ air, opens: outside })
  const own = settles(outside)
  if (!own) return null
  const rate = airCapacityRate({ air: coolant.given('air') })
  const water = (airTemperature: number): number | null => coolant.at({ airTemperature })?.['temperature'] ?? null
  const behind = warmedOutlet({ inlet: before, heat: sustainedHeat({ full: coolant.given('coolantHeat'), share: coolant.given('share') }), rate })
  const last = settles(behind)
  if (!last) return null
  return {
    outside, behind,
    places: [
      { name: 'in air of its own', oil: own['temperature']!, coolant: water(before) },
      { name: 'in front of the radiator', oil: own['temperature']!, coolant: water(warmedOutlet({ inlet: before, heat: own['heat']!, rate })) },
      { name: 'behind the radiator', oil: last['temperature']!, coolant: water(before) },
    ],
  }
}

export default figure<Data>({
  title: 'The oil cooler beside, before and behind the radiator',
  from,
  summary(data, system) {
    if (!data) return 'The heat or the air of this build could not be worked out, so nothing is drawn.'
    const t = shown(oilTemperature, system)
    return `Where oil and coolant settle with the oil cooler in three places, outside air at ${t.say(data.outside)}: ${data.places.map(({ name, oil, coolant }) => `${name}, oil ${t.say(oil)} and coolant ${coolant === null ? 'boiling' : t.say(coolant)}`).join('; ')}. Air leaves the radiator at ${t.say(data.behind)}. The flows of air are held, though two cores in one stream let less of it through. The oil’s thermostat is left out. The bars are drawn from the temperature of the air outside.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const t = shown(oilTemperature, system)
    return <Bars says="How far oil and coolant stand above outside air, for three places of the oil cooler."
      named={[{ name: 'oil', class: 'fill' }, { name: 'coolant', class: 'fill-accent' }]}
      rows={data.places.flatMap(({ name, oil, coolant }) => [
        { name: `Oil, cooler ${name}`, says: t.say(oil), parts: [{ of: oil - data.outside, class: 'fill' }] },
        { name: `Coolant, oil cooler ${name}`, says: coolant === null ? 'boils' : t.say(coolant), parts: coolant === null ? [] : [{ of: coolant - data.outside, class: 'fill-accent' }] },
      ])} />
  },
  table(data, system) {
    const t = shown(oilTemperature, system), c = shown(coolantTemperatureOf, system)
    return { head: ['Oil cooler', t.head('Oil'), c.head('Coolant')], rows: (data?.places ?? []).map(({ name, oil, coolant }) => [name, writeNumber(t.of(oil)), coolant === null ? 'boils' : writeNumber(c.of(coolant))]) }
  },
})
