import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import coolantTemperatureCalc from '@trochoid/compute/cooling/coolantTemperature.calc.ts'
import coolingAir from '@trochoid/compute/cooling/coolingAir.calc.ts'
import { carSpeed, coolantLimit, sustainedShare } from '@trochoid/compute/cooling/fields.ts'
import { carSpeedOf, coolantTemperatureOf, sustainedShareOf } from '@trochoid/compute/cooling/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { temperatureLimit } from '@trochoid/compute/oil/fields.ts'
import oilTemperatureCalc from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Here = { share: number; coolant: number; oil: number }
type Data = { speed: number; car: number; all: Here[]; boils: number | null; share: number; boiling: number; coolantLimit: number | null; oilLimit: number | null } | null

function from({ sheet, point }: Build): Data {
  const air: AnyCalculation = coolingAir, coolant: AnyCalculation = coolantTemperatureCalc, oil: AnyCalculation = oilTemperatureCalc
  const share = valueAt(sheet, sustainedShare), boiling = point['cooling.boilingPoint'], car = valueAt(sheet, carSpeed)
  if (share === null || car === null || boiling === undefined || point['cooling.coolantTemperature'] === undefined || point['oil.temperature'] === undefined) return null
  const at = (of: number): Here[] => {
    try {
      const { air: flow, airTemperature } = air.answer({ ...valuesFor(air, sheet, point), share: of })
      return [{
        share: of,
        coolant: coolant.answer({ ...valuesFor(coolant, sheet, point), share: of, air: flow, airTemperature })['temperature']!,
        oil: oil.answer({ ...valuesFor(oil, sheet, point), share: of })['temperature']!,
      }]
    } catch { return [] }
  }
  const shares = [...new Set([...Array.from({ length: 19 }, (_, i) => 0.1 + 0.05 * i), share])].sort((a, b) => a - b)
  // A coolant that boils has no such temperature: the drawing ends there.
  const all = shares.flatMap(at), boils = reaches(all, 'coolant', boiling)
  return { speed: point['engine.speed']!, car, all: boils === null ? all : [...all.filter((h) => h.share < boils), ...at(boils)], boils, share, boiling, coolantLimit: valueAt(sheet, coolantLimit), oilLimit: valueAt(sheet, temperatureLimit) }
}

/** The largest share that stays within a limit, on a straight line between two that were worked out. */
function reaches(all: readonly Here[], of: 'coolant' | 'oil', limit: number | null): number | null {
  const i = limit === null ? -1 : all.findIndex((h) => h[of] > limit)
  if (i < 1) return null
  const a = all[i - 1]!, b = all[i]!
  return a.share + ((b.share - a.share) * (limit! - a[of])) / (b[of] - a[of])
}

export default figure<Data>({
  title: 'Where coolant and oil settle, over the share of full load that is kept up',
  from,
  summary(data, system) {
    if (!data) return 'This build has no full-throttle point, or a cooler that is not known, so nothing is drawn.'
    const y = shown(sustainedShareOf, system)
    const says = (name: string, share: number | null): string => (share === null ? `the ${name} keeps within its limit all the way` : `the ${name} reaches its limit at ${y.say(share, 2)}`)
    return `At ${shown(shaftSpeed, system).say(data.speed)} and ${shown(carSpeedOf, system).say(data.car)}. The sheet’s share is ${y.say(data.share, 2)}. As the share rises ${says('coolant', reaches(data.all, 'coolant', data.coolantLimit))}, and ${says('oil', reaches(data.all, 'oil', data.oilLimit))}. The bulk of the coolant boils at ${shown(coolantTemperatureOf, system).say(data.boiling)}${data.boils === null ? '' : `, reached at ${y.say(data.boils, 2)}: there the drawing ends`}. These are the temperatures once nothing changes any more: a short burst never gets there.`
  },
  Picture({ data, system }) {
    if (!data || data.all.length < 2) return null
    const y = shown(sustainedShareOf, system), t = shown(coolantTemperatureOf, system)
    const first = y.of(data.all[0]!.share), last = y.of(data.all.at(-1)!.share)
    const over = (of: 'coolant' | 'oil'): Spot[] => data.all.map((h) => [y.of(h.share), t.of(h[of])])
    const level = (name: string, c: string, value: number | null): Named[] => (value === null ? [] : [{ name, class: c, spots: [[first, t.of(value)], [last, t.of(value)]] }])
    const lines: Named[] = [{ name: 'Coolant', class: 'line', spots: over('coolant') }, { name: 'Oil', class: 'line two', dash: long, spots: over('oil') }]
    const same = data.coolantLimit === data.oilLimit
    const limits = [...level(same ? 'Limit of both' : 'Coolant limit', 'line dash', data.coolantLimit), ...(same ? [] : level('Oil limit', 'line two dash', data.oilLimit)), ...level('Bulk boils', 'thin', data.boiling)]
    const ends = [...lines, ...limits].flatMap((l) => l.spots.map(([, value]) => value))
    const on = frame({ x: [first, last], y: [Math.min(...ends), Math.max(...ends)] })
    const here = on.x.at(y.of(data.share))
    return (
      <Sheet says="Coolant and oil temperature over the sustained share of full load, with their limits and the boiling point." height={on.height} named={[...lines, ...limits]}>
        <Axes on={on} x={y.head()} y={t.head('Temperature')} />
        <line class="cross" x1={here} x2={here} y1={on.top} y2={on.bottom} />
        <Lines on={on} of={[...limits, ...lines]} />
        <Words x={here + 8} y={on.bottom - 10}>the sheet’s share</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const y = shown(sustainedShareOf, system), t = shown(coolantTemperatureOf, system)
    return { head: [y.head(), t.head('Coolant'), t.head('Oil')], rows: (data?.all ?? []).filter((h, i) => i % 3 === 0 || h.share === data!.share).map((h) => [writeNumber(y.of(h.share), 2), writeNumber(t.of(h.coolant)), writeNumber(t.of(h.oil))]) }
  },
})
