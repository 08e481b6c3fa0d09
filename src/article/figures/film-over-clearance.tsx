import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { density15, index } from '@trochoid/compute/oil/fields.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import { highShearShareOf } from '@trochoid/compute/oil/highShearShareOf.ts'
import { diametralClearance, filmThickness, oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import { viscosity40ByIndex } from '@trochoid/compute/oil/viscosity40ByIndex.ts'
import { viscosityAt150 } from '@trochoid/compute/oil/viscosityAt150.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Oil = { name: string; films: number[] }
type Data = { speed: number; supply: number; here: number; wanted: number; now: number; clearances: number[]; oils: Oil[] } | null

/** Hot grades, each at the thinnest that may carry it. */
const grades = ['30', '40', '50'] as const

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = rotorBearingInertia
  const given: Values = valuesFor(of, sheet, point)
  const density = valueAt(sheet, density15), flat = valueAt(sheet, index), here = given['diametral'] as number
  if (point['engine.power'] === undefined || point['oil.temperature'] === undefined || density === null || flat === null) return null
  const clearances = Array.from({ length: 17 }, (_, i) => here * (0.5 + (1.5 * i) / 16))
  const film = (oil: Values, diametral: number): number => of.answer({ ...given, ...oil, diametral })['film']!
  try {
    const oils = grades.map((grade): Oil => {
      const { least, highShear } = gradeLimits({ grade })
      const fresh = { viscosity40: viscosity40ByIndex({ viscosity100: least, index: flat }), viscosity100: least }
      const share = highShearShareOf({ highShear, lowShear: viscosityAt150({ ...fresh, density15: density }) })
      return { name: `${grade}, thinnest`, films: clearances.map((c) => film({ ...fresh, share }, c)) }
    })
    return {
      speed: given['speed'] as number, supply: given['supply'] as number, here, wanted: of.answer(given)['wanted']!, now: film({}, here), clearances,
      oils: [{ name: 'In the sump now', films: clearances.map((c) => film({}, c)) }, ...oils],
    }
  } catch { return null }
}

export default figure<Data>({
  title: 'Film over clearance, oil by oil',
  from,
  summary(data, system) {
    if (!data) return 'The film of this build could not be worked out, so nothing is drawn.'
    const h = shown(filmThickness, system), c = shown(diametralClearance, system)
    return `Rotor bearing under inertia at ${shown(shaftSpeed, system).say(data.speed)}, oil at ${shown(oilTemperature, system).say(data.supply)}. At ${c.say(data.here)} the oil in the sump leaves ${h.say(data.now)}; ${h.say(data.wanted)} is wanted to clear the roughness. A wider bearing needs a higher line for the same film. Where a line bends over on the left, the gap passes too little oil to stay cool. Each grade is drawn at the thinnest oil that may carry it; two with the same high-shear minimum fall nearly on one line. Every line takes oil at the same temperature: what a wider gap costs in pressure is not in it.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const h = shown(filmThickness, system), c = shown(diametralClearance, system)
    const on = frame({ x: [c.of(data.clearances[0]!), c.of(data.clearances.at(-1)!)], y: [0, h.of(Math.max(...data.oils.flatMap((o) => o.films)))] })
    const looks = ['line two', 'line dash', 'line', 'thin']
    const lines: Named[] = data.oils.map(({ name, films }, i) => ({ name, class: looks[i]!, dash: i === 0 ? long : undefined, spots: films.map((f, j): Spot => [c.of(data.clearances[j]!), h.of(f)]) }))
    const wanted = on.y.at(h.of(data.wanted))
    return (
      <Sheet says="Thinnest film over clearance for the oil in the sump and three grades." height={on.height} named={lines}>
        <Axes on={on} x={c.head()} y={h.head()} />
        <line class="cross" x1={on.left} x2={on.right} y1={wanted} y2={wanted} />
        <Words x={on.right} y={wanted - 6} anchor="end">wanted</Words>
        <Lines on={on} of={lines} />
        <circle class="mark" r="6" cx={on.x.at(c.of(data.here))} cy={on.y.at(h.of(data.now))} />
      </Sheet>
    )
  },
  table(data, system) {
    const h = shown(filmThickness, system), c = shown(diametralClearance, system)
    return {
      head: [c.head(), ...(data?.oils ?? []).map((o) => h.head(o.name))],
      rows: (data?.clearances ?? []).flatMap((x, i) => (i % 2 === 0 ? [[writeNumber(c.of(x)), ...data!.oils.map((o) => writeNumber(h.of(o.films[i]!)))]] : [])),
    }
  },
})
