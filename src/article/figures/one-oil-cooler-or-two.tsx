import oilTemperatureOf from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { oilCapacityRate } from '@trochoid/compute/oil/oilCapacityRate.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'
import { oilSpecificHeatAt } from '@trochoid/compute/oil/oilSpecificHeatAt.ts'
import { oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Data = { air: number; limit: number; ways: { name: string; oil: number }[] } | null

function from(build: Build): Data {
  if (build.point['cooling.oilHeat'] === undefined) return null
  const { given, at } = asked(oilTemperatureOf, build)
  const air = given('air'), limit = given('limit'), heat = given('fullHeat'), oilFlow = given('perTurn')
  // The thermostat is left out: what the cores can do is asked.
  const settles = (change = {}) => at({ opens: air, ...change })
  const one = settles(), shared = settles({ fullHeat: heat / 2, perTurn: oilFlow / 2, airFlow: given('airFlow') / 2 }), beside = settles({ fullHeat: heat / 2, perTurn: oilFlow / 2 })
  if (!one || !shared || !beside) return null
  const [alone, all] = [one['temperature']!, one['heat']!]
  const oil = oilCapacityRate({ flow: one['flow']!, density: oilDensityAt({ density15: given('density15'), temperature: limit }), specificHeat: oilSpecificHeatAt({ density15: given('density15'), temperature: limit }) })
  // In series the first passes the share k = ε·C_min/C_oil of what the oil stands above the air, the second the same share of what is left.
  const above = (alone - air) / all
  const k = 1 / (1 + oil * above)
  const second = (all * (1 - k)) / (2 - k)
  return {
    air, limit,
    ways: [
      { name: 'One cooler', oil: alone },
      { name: 'Two side by side, sharing its air', oil: shared['temperature']! },
      { name: 'Two side by side, each with as much air', oil: beside['temperature']! },
      { name: 'Two in series, each with as much air', oil: air + second * above },
    ],
  }
}

export default figure<Data>({
  title: 'One oil cooler, or two of the same',
  from,
  summary(data, system) {
    if (!data) return 'The oil’s heat in this build could not be worked out, so nothing is drawn.'
    const t = shown(oilTemperature, system)
    return `Where the oil settles behind the coolers of this build, all of it led through them, with outside air at ${t.say(data.air)}: ${data.ways.map(({ name, oil }) => `${name.charAt(0).toLowerCase()}${name.slice(1)}, ${t.say(oil)}`).join('; ')}. The limit accepted is ${t.say(data.limit)}. The bars are drawn from the temperature of the air.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const t = shown(oilTemperature, system)
    return <Bars says="How far the oil stands above outside air with one cooler and with two." rows={data.ways.map(({ name, oil }, i) => ({ name, says: t.say(oil), parts: [{ of: oil - data.air, class: i === 0 ? 'fill' : 'area' }] }))} limit={{ at: data.limit - data.air, says: 'limit accepted' }} />
  },
  table(data, system) {
    const t = shown(oilTemperature, system)
    return { head: ['How', t.head('Oil')], rows: (data?.ways ?? []).map(({ name, oil }) => [name, writeNumber(t.of(oil))]) }
  },
})
