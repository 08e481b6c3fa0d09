import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { index } from '@trochoid/compute/oil/fields.ts'
import oilForClearance from '@trochoid/compute/oil/oilForClearance.calc.ts'
import { diametralClearance, filmThickness } from '@trochoid/compute/oil/quantities.ts'
import rotorBearingGas from '@trochoid/compute/oil/rotorBearingGas.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { shown } from './plot/shown.ts'
import { answered, paragraph, WhichOil, type Answers, type OilAsked } from './tools/WhichOil.tsx'

type Data = { asked: OilAsked; start: Answers } | null

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = oilForClearance, gas: AnyCalculation = rotorBearingGas
  const flat = valueAt(sheet, index)
  if (point['engine.power'] === undefined || point['oil.temperature'] === undefined || flat === null) return null
  try {
    const given = valuesFor(of, sheet, point) as Record<string, unknown>
    const load = gas.answer(valuesFor(gas, sheet, point))['gas']!
    return { asked: { given, index: flat, gasLoad: load }, start: { clearance: given['diametral'] as number, supply: given['supply'] as number, speed: given['speed'] as number } }
  } catch { return null }
}

export default figure<Data>({
  title: 'Film of each grade in the rotor bearing',
  from,
  moves: true,
  summary(data, system) {
    if (!data) return 'The films of this build could not be worked out, so nothing is drawn.'
    const { out, cells } = answered(data.asked, data.start)
    return `As the build stands: ${paragraph(out, data.start, cells, system)}`
  },
  Picture: ({ data, system }) => (data ? <WhichOil asked={data.asked} start={data.start} system={system} /> : null),
  table(data, system) {
    const c = shown(diametralClearance, system), h = shown(filmThickness, system)
    const cells = data ? answered(data.asked, data.start).cells : []
    const grades = [...new Set(cells.map((x) => x.grade))], gaps = [...new Set(cells.map((x) => x.clearance))]
    const say = (film: number | null): string => (film === null ? 'none' : writeNumber(h.of(film)))
    return {
      head: [c.head(), ...grades.map((g) => `SAE ${g}: inertia, gas, ${h.unit}`)],
      rows: gaps.map((gap) => [writeNumber(c.of(gap)), ...grades.map((g) => { const x = cells.find((y) => y.grade === g && y.clearance === gap)!; return `${say(x.inertia)}, ${say(x.gas)}` })]),
    }
  },
})
