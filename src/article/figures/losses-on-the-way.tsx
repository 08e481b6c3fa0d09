import chargeTemperature from '@trochoid/compute/boost/chargeTemperature.calc.ts'
import { flowPressureLoss } from '@trochoid/compute/boost/flowPressureLoss.ts'
import { pressureLoss } from '@trochoid/compute/boost/quantities.ts'
import { gasDensity } from '@trochoid/compute/engine/gasDensity.ts'
import throttlePlate from '@trochoid/compute/engine/throttlePlate.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

/** What a place takes, and what that does to the ratio the compressor has to work at. */
type Place = { name: string; loss: number; ratio: number }
type Data = { places: Place[]; ratio: number; bare: number } | null

function from(build: Build): Data {
  const { given, at } = asked(chargeTemperature, build), x = at()
  if (!x) return null
  const outside = given('outside'), manifold = given('manifold'), flow = given('flow'), temperature = given('temperature')
  const inlet = flowPressureLoss({ coefficient: given('inletCoefficient'), flow, density: gasDensity({ pressure: outside, temperature }) })
  const cooler = flowPressureLoss({ coefficient: given('coolerCoefficient'), flow, density: gasDensity({ pressure: manifold, temperature: given('assumed') }) })
  const throttle = asked(throttlePlate, build).at()?.['loss'] ?? 0
  const bare = manifold / outside
  return {
    ratio: (manifold + cooler + throttle) / (outside - inlet), bare,
    places: [
      { name: 'Filter and duct', loss: inlet, ratio: manifold / (outside - inlet) - bare },
      { name: 'Charge cooler and pipes', loss: cooler, ratio: cooler / outside },
      { name: 'Throttle, wide open', loss: throttle, ratio: throttle / outside },
    ],
  }
}

export default figure<Data>({
  title: 'What each place on the way in takes',
  from,
  summary(data, system) {
    if (!data) return 'The way in of this build could not be worked out, so nothing is drawn.'
    const p = shown(pressureLoss, system)
    return `At the point of most power. ${data.places.map(({ name, loss }) => `${name}: ${p.say(loss)}`).join('. ')}. Without any of them a ratio of ${writeNumber(data.bare)} would do; the compressor works at ${writeNumber(data.ratio)}. A loss before the compressor is multiplied by that ratio, one behind it only added.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const p = shown(pressureLoss, system)
    return <Bars says="Pressure taken by filter and duct, by charge cooler and pipes, and by the throttle." rows={data.places.map(({ name, loss }) => ({ name, says: p.say(loss), parts: [{ of: p.of(loss), class: 'fill' }] }))} />
  },
  table(data, system) {
    const p = shown(pressureLoss, system)
    return { head: ['Place', p.head(), 'Pressure ratio it costs'], rows: (data?.places ?? []).map(({ name, loss, ratio }) => [name, writeNumber(p.of(loss)), writeNumber(ratio, 2)]) }
  },
})
