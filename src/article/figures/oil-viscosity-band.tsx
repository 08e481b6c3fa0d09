import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { density15, fuelInOil, grade, index, viscosity100, viscosity40 } from '@trochoid/compute/oil/fields.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import oilGrade from '@trochoid/compute/oil/oilGrade.calc.ts'
import { dilution, kinematicViscosity, oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { viscosity40ByIndex } from '@trochoid/compute/oil/viscosity40ByIndex.ts'
import { waltherLine } from '@trochoid/compute/oil/waltherLine.ts'
import { waltherViscosity } from '@trochoid/compute/oil/waltherViscosity.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Band, Lines, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Data = { grade: string; fuel: number; hottest: number | null; least: number; most: number; own: boolean; at: number[]; low: number[]; high: number[]; fresh: number[]; sump: number[] } | null

const at = Array.from({ length: 27 }, (_, i) => degC(20 + 5 * i))
/** Viscosity over temperature of an oil known at 40 and 100 °C. */
const over = (at40: number, at100: number): number[] => {
  const line = waltherLine({ viscosity1: at40, temperature1: degC(40), viscosity2: at100, temperature2: degC(100) })
  return at.map((temperature) => waltherViscosity({ ...line, temperature }))
}

function from({ sheet, point }: Build): Data {
  const of = valueAt(sheet, grade), flat = valueAt(sheet, index), sump40 = point['oil.sumpViscosity40'], sump100 = point['oil.sumpViscosity100']
  if (of === null || flat === null || sump40 === undefined || sump100 === undefined || valueAt(sheet, density15) === null) return null
  const { least, most } = gradeLimits({ grade: of })
  if (!(most > least)) return null
  const flatter = oilGrade.in.flatter.default as number
  const fresh100 = valueAt(sheet, viscosity100) ?? least
  return {
    grade: of, fuel: valueAt(sheet, fuelInOil) ?? 0, hottest: point['oil.temperature'] ?? null, least, most, own: valueAt(sheet, viscosity100) !== null, at,
    low: over(viscosity40ByIndex({ viscosity100: least, index: flat }), least), high: over(viscosity40ByIndex({ viscosity100: most, index: flatter }), most),
    fresh: over(valueAt(sheet, viscosity40) ?? viscosity40ByIndex({ viscosity100: fresh100, index: flat }), fresh100), sump: over(sump40, sump100),
  }
}

export default figure<Data>({
  title: 'A grade is a band',
  from,
  summary(data, system) {
    if (!data) return 'A winter grade alone sets no upper limit when hot, so no band can be drawn.'
    const nu = shown(kinematicViscosity, system), t = shown(oilTemperature, system)
    const hot = data.hottest === null ? '' : ` On a long pull the oil of this build settles at ${t.say(data.hottest)}.`
    return `${data.grade} may lie anywhere from ${nu.say(data.least)} to ${nu.say(data.most)} at ${t.say(degC(100))}: the upright stroke. Away from that temperature the band rests on the viscosity index, which a grade does not set.${data.own ? '' : ' Only the grade is known here, so the thin edge is taken.'} The dashed line is the oil with ${shown(dilution, system).say(data.fuel)} of fuel in it, an extrapolation.${hot}`
  },
  Picture({ data, system }) {
    if (!data) return null
    const nu = shown(kinematicViscosity, system), t = shown(oilTemperature, system)
    const spots = (y: readonly number[]): Spot[] => y.map((v, i) => [t.of(data.at[i]!), nu.of(v)])
    const on = frame({ x: [t.of(data.at[0]!), t.of(data.at.at(-1)!)], y: [nu.of(Math.min(...data.sump, ...data.low) * 0.9), nu.of(Math.max(...data.high) * 1.1)], height: 380, log: true })
    const lines: Named[] = [
      { name: data.own ? 'The oil by its data sheet' : 'The thinnest oil of the grade', class: 'line', spots: spots(data.fresh) },
      { name: 'The same with fuel in it', class: 'line two dash', spots: spots(data.sump) },
    ]
    const at100 = on.x.at(t.of(degC(100)))
    return (
      <Sheet says={`Viscosity over temperature: ${data.grade} as a band, the oil in use as a line.`} height={on.height} named={lines}>
        <Band on={on} low={spots(data.low)} high={spots(data.high)} />
        <Axes on={on} x={t.head()} y={nu.head()} />
        <Lines on={on} of={lines} />
        <line class="line" x1={at100} x2={at100} y1={on.y.at(nu.of(data.least))} y2={on.y.at(nu.of(data.most))} stroke-width="5" />
        <Words x={at100 + 8} y={on.y.at(nu.of(data.most)) - 6} strong>{data.grade}</Words>
        {data.hottest !== null && <line class="cross" x1={on.x.at(t.of(data.hottest))} x2={on.x.at(t.of(data.hottest))} y1={on.top} y2={on.bottom} />}
        {data.hottest !== null && <Words x={on.x.at(t.of(data.hottest)) - 6} y={on.top + 20} anchor="end">long pull</Words>}
      </Sheet>
    )
  },
  table(data, system) {
    const nu = shown(kinematicViscosity, system), t = shown(oilTemperature, system)
    return {
      head: [t.head(), nu.head('Thin edge'), nu.head('Thick edge'), nu.head('Without fuel'), nu.head('With fuel')],
      rows: (data?.at ?? []).flatMap((temperature, i) => (i % 4 === 0 ? [[writeNumber(t.of(temperature)), ...[data!.low, data!.high, data!.fresh, data!.sump].map((y) => writeNumber(nu.of(y[i]!)))]] : [])),
    }
  },
})
