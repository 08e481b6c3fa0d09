import coolantTemperature from '@trochoid/compute/cooling/coolantTemperature.calc.ts'
import { boilMarginOf, coolantTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Move = { name: string; gain: number }
type Data = { temperature: number; moves: Move[] } | null

function from(build: Build): Data {
  const { given, at } = asked(coolantTemperature, build)
  const temperature = at()?.['temperature']
  if (temperature === undefined) return null
  const moves: readonly (readonly [string, Record<string, number>])[] = [
    ['A fifth less heat kept up', { share: 0.8 * given('share') }],
    ['A fifth more air through the core', { air: 1.2 * given('air') }],
    ['A core rated for a fifth more heat', { ratedHeat: 1.2 * given('ratedHeat') }],
    ['Air five degrees cooler in front of the core', { airTemperature: given('airTemperature') - 5 }],
    ['A fifth more pump', { pumpFlow: 1.2 * given('pumpFlow') }],
  ]
  return { temperature, moves: moves.flatMap(([name, change]) => { const now = at(change)?.['temperature']; return now === undefined ? [] : [{ name, gain: temperature - now }] }).sort((a, b) => b.gain - a.gain) }
}

export default figure<Data>({
  title: 'By how much each change would lower the coolant temperature',
  from,
  summary(data, system) {
    if (!data) return 'The coolant temperature of this build could not be worked out, so nothing is drawn.'
    const k = shown(boilMarginOf, system), best = data.moves[0], least = data.moves.at(-1)
    return `From ${shown(coolantTemperatureOf, system).say(data.temperature)}, one change at a time, all else held. ${best && least ? `${best.name}: ${k.say(best.gain)}. ${least.name}: ${k.say(least.gain)}.` : ''} Where the thermostat still holds the temperature, nothing moves it: the change shows as room.`
  },
  Picture({ data, system }) {
    if (!data || data.moves.length === 0) return null
    const k = shown(boilMarginOf, system)
    return <Bars says="Kelvin gained by five changes, largest first." rows={data.moves.map(({ name, gain }) => ({ name, says: k.say(gain), parts: [{ of: Math.max(0, k.of(gain)), class: 'fill-accent' }] }))} />
  },
  table(data, system) {
    const k = shown(boilMarginOf, system)
    return { head: ['Change', k.head('Cooler by')], rows: (data?.moves ?? []).map(({ name, gain }) => [name, writeNumber(k.of(gain))]) }
  },
})
