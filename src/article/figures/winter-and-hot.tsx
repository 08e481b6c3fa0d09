import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import { highShearShareOf } from '@trochoid/compute/oil/highShearShareOf.ts'
import { filmThickness, oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import { viscosity40ByIndex } from '@trochoid/compute/oil/viscosity40ByIndex.ts'
import { viscosityAt150 } from '@trochoid/compute/oil/viscosityAt150.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly wanted: number; readonly street: number; readonly track: number; readonly tracks: number }

/** Each oil at the thin edge of its grade: what a can promises at least. */
const oils = [['5W-30', 'Street, 5W-30'], ['10W-40', 'Street, 10W-40'], ['20W-50', 'Track, 20W-50']] as const
const flat = 150
const track = degC(120)

/** Film of the rotor bearing over the temperature of the oil that reaches it, for three grades at their thin edge. */
export default lineFigure<Data>({
  title: 'Film over oil temperature, three grades at their thin edge',
  says: 'Rotor bearing film over oil temperature for three grades, with the film wanted.',
  x: oilTemperature, y: filmThickness,
  from({ sheet, point }) {
    const of: AnyCalculation = rotorBearingInertia
    const here = point['oil.temperature']
    if (here === undefined || point['engine.power'] === undefined) return null
    const given = valuesFor(of, sheet, point), density15 = given['density15'] as number
    const film = (grade: string) => {
      const { least, highShear } = gradeLimits({ grade })
      const oil = { viscosity40: viscosity40ByIndex({ viscosity100: least, index: flat }), viscosity100: least }
      const share = highShearShareOf({ highShear, lowShear: viscosityAt150({ ...oil, density15 }) })
      return (supply: number): number | null => answered(of, { ...given, ...oil, share, supply }, 'film')
    }
    const wanted = answered(of, given, 'wanted'), street = film('10W-40')(degC(90)), heavy = film('20W-50')(degC(90)), tracks = film('20W-50')(track)
    if (wanted === null || street === null || heavy === null || tracks === null) return null
    const x = steps(degC(70), degC(140), 14)
    return { here, wanted, street, track: heavy, tracks, x, lines: oils.map(([grade, name]) => ({ name, y: x.map(film(grade)) })), levels: [{ says: 'wanted', at: wanted }], uprights: [{ says: 'long pull here', at: here }] }
  },
  summary({ wanted, street, track: heavy, tracks }, system) {
    const h = shown(filmThickness, system), t = shown(oilTemperature, system)
    return `Rotor bearing under inertia at the speed of greatest power, each oil at the thin edge of its grade and an index of ${flat}. At ${t.say(degC(90))} the thinnest 10W-40 leaves ${h.say(street)} and the thinnest 20W-50 ${h.say(heavy)}; at ${t.say(track)} the latter leaves ${h.say(tracks)}. Wanted is ${h.say(wanted)}. A real oil of either grade lies above its line.`
  },
  without: 'The film of this build could not be worked out, so nothing is drawn.',
})
