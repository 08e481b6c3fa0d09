import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { premix } from '@trochoid/compute/fuel/fields.ts'
import { premixShare } from '@trochoid/compute/fuel/quantities.ts'
import { referenceDose } from '@trochoid/compute/oil/fields.ts'
import { sealDose } from '@trochoid/compute/oil/quantities.ts'
import sealOil from '@trochoid/compute/oil/sealOil.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Dose = { speed: number; metered: number; premixed: number }
type Data = { full: Dose[]; idle: Dose | null; cut: number | null; reference: number | null; share: number }

function from({ sheet, solved }: Build): Data {
  const of: AnyCalculation = sealOil
  const dose = (values: Readonly<Record<string, number>>): Dose | null => {
    if (values['fuel.premixOilFlow'] === undefined || values['engine.manifoldPressure'] === undefined) return null
    const { metered, premixed } = of.answer(valuesFor(of, sheet, values))
    return { speed: values['engine.speed']!, metered: metered!, premixed: premixed! }
  }
  const idle = dose(solved.idle.values)
  const closed = valueAt(sheet, idleManifoldPressure)
  return {
    full: solved.points.map((p) => dose(p.values)).filter((d) => d !== null), idle,
    // Throttle shut, fuel cut: the lever is at rest and no fuel carries oil.
    cut: closed === null || !idle ? null : of.answer({ ...valuesFor(of, sheet, solved.idle.values), manifold: closed, premixOil: 0 })['metered']!,
    reference: valueAt(sheet, referenceDose), share: valueAt(sheet, premix) ?? 0,
  }
}

export default figure<Data>({
  title: 'What the seals get in each shaft turn',
  from,
  summary({ full, idle, cut, reference, share }, system) {
    const m = shown(sealDose, system)
    const last = full.at(-1)
    if (!last) return 'This build has no full-throttle point, so nothing is drawn.'
    const still = idle ? ` At idle the pump gives ${m.say(idle.metered)} and premix ${m.say(idle.premixed)}.` : ''
    const none = cut === null ? '' : ` With the fuel cut the pump still gives ${m.say(cut)}; premix gives nothing.`
    return `Full throttle, premix at ${shown(premixShare, system).say(share)}: at ${shown(shaftSpeed, system).say(last.speed)} the pump gives ${m.say(last.metered)}, premix ${m.say(last.premixed)}.${still}${none}${reference === null ? '' : ` The dotted line is the reference that was chosen, ${m.say(reference)}: no published requirement exists.`} All premix is taken to reach the seals.`
  },
  Picture({ data, system }) {
    const m = shown(sealDose, system), s = shown(shaftSpeed, system)
    if (data.full.length < 2) return null
    const on = frame({ x: [0, s.of(data.full.at(-1)!.speed)], y: [0, m.of(Math.max(data.reference ?? 0, ...data.full.map((d) => d.metered + d.premixed)))], height: 380 })
    const over = (of: (d: Dose) => number): Spot[] => data.full.map((d) => [s.of(d.speed), m.of(of(d))])
    const lines: Named[] = [
      { name: 'Both', class: 'line', spots: over((d) => d.metered + d.premixed) },
      { name: 'Premix alone', class: 'line two', dash: long, spots: over((d) => d.premixed) },
      { name: 'Metering pump alone', class: 'line dash', spots: over((d) => d.metered) },
    ]
    const { idle, cut, reference } = data
    const flat = (y: number): Spot[] => [[0, m.of(y)], [s.of(data.full.at(-1)!.speed), m.of(y)]]
    return (
      <Sheet says="Oil of each shaft turn over shaft speed, by metering pump, premix and both, with idle and fuel cut." height={on.height} named={lines}>
        <Axes on={on} x={s.head()} y={m.head()} />
        {reference !== null && <g stroke-dasharray="1 4"><Lines on={on} of={[{ name: 'Reference', class: 'thin', spots: flat(reference) }]} /></g>}
        {reference !== null && <Words x={on.right} y={on.y.at(m.of(reference)) + 20} anchor="end">reference chosen</Words>}
        {cut !== null && <g opacity=".55"><Lines on={on} of={[{ name: 'Cut, pump', class: 'line dash', spots: flat(cut) }, { name: 'Cut, premix', class: 'line two', spots: flat(0) }]} /></g>}
        {cut !== null && <Words x={on.right} y={on.y.at(m.of(cut)) - 6} anchor="end">fuel cut: pump</Words>}
        {cut !== null && <Words x={on.right} y={on.y.at(0) - 6} anchor="end">fuel cut: premix</Words>}
        <Lines on={on} of={lines} />
        {idle && [idle.metered + idle.premixed, idle.premixed].map((y) => <circle key={y} class="mark" r="5" cx={on.x.at(s.of(idle.speed))} cy={on.y.at(m.of(y))} />)}
        {idle && <Words x={on.x.at(s.of(idle.speed)) + 10} y={on.y.at(m.of(idle.metered + idle.premixed)) + 6}>idle</Words>}
      </Sheet>
    )
  },
  table({ full, idle, cut }, system) {
    const m = shown(sealDose, system), s = shown(shaftSpeed, system)
    const row = (where: string, metered: number, premixed: number): string[] => [where, ...[metered, premixed, metered + premixed].map((v) => writeNumber(m.of(v)))]
    return {
      head: ['Where', m.head('Metering pump'), m.head('Premix'), m.head('Both')],
      rows: [...(idle ? [row('Idle', idle.metered, idle.premixed)] : []), ...(cut === null ? [] : [row('Fuel cut, throttle shut', cut, 0)]), ...full.filter((_, i) => i % 5 === 0).map((d) => row(`Full throttle, ${s.say(d.speed)}`, d.metered, d.premixed))],
    }
  },
})
