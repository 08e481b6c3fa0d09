import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import clutchEngagementHeat from '@trochoid/compute/driveline/clutchEngagementHeat.calc.ts'
import { secondGear } from '@trochoid/compute/driveline/fields.ts'
import { clutchRise, engagementHeat } from '@trochoid/compute/driveline/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { rpm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; heat: number; first: number; second: number }
type Data = { all: Here[]; stands: Here } | null

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = clutchEngagementHeat
  const given = valuesFor(of, sheet, point), second = valueAt(sheet, secondGear)
  if (second === null) return null
  const at = (speed: number): Here => {
    const here = of.answer({ ...given, speed })
    return { speed, heat: here['heat']!, first: here['rise']!, second: of.answer({ ...given, speed, ratio: second })['rise']! }
  }
  return { all: steps(rpm(1500), rpm(7000), 11).map(at), stands: at(rpm(4000)) }
}

export default figure<Data>({
  title: 'How much one launch warms the iron of the clutch',
  from,
  summary(data, system) {
    if (!data) return 'The second gear of this build is not known, so nothing is drawn.'
    const s = shown(shaftSpeed, system), t = shown(clutchRise, system), e = shown(engagementHeat, system)
    const last = data.all.at(-1)!
    return `Held at ${s.say(data.stands.speed)} in first gear, one launch makes ${e.say(data.stands.heat)} and warms all the rubbed iron by ${t.say(data.stands.first)}; at ${s.say(last.speed)} it is ${t.say(last.first)}. Started in second gear the same speeds give ${t.say(data.stands.second)} and ${t.say(last.second)}. This is the mean of the iron: the rubbed face is far hotter for a moment. With the tyres spinning, part of the heat goes into them.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const s = shown(shaftSpeed, system), t = shown(clutchRise, system)
    const over = (of: 'first' | 'second'): Spot[] => data.all.map((h) => [s.of(h.speed), t.of(h[of])])
    return <Curves says="Warming of the clutch’s iron over the engine speed held at the start, in first and in second gear." x={s.head('Engine speed held')} y={t.head('Warming')} reach={[0]}
      lines={[{ name: 'First gear', class: 'line', spots: over('first') }, { name: 'Second gear', class: 'line two', dash: long, spots: over('second') }]}
      marks={[{ at: [s.of(data.stands.speed), t.of(data.stands.first)], to: 'below' }]} />
  },
  table(data, system) {
    const s = shown(shaftSpeed, system), t = shown(clutchRise, system), e = shown(engagementHeat, system)
    return { head: [s.head('Speed held'), e.head('Heat, first gear'), t.head('Warming, first gear'), t.head('Warming, second gear')], rows: (data?.all ?? []).map((h) => [writeNumber(s.of(h.speed)), writeNumber(e.of(h.heat)), writeNumber(t.of(h.first)), writeNumber(t.of(h.second))]) }
  },
})
