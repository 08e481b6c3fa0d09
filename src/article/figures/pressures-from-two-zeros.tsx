import { at as boost } from '@trochoid/compute/boost/point.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { idleManifoldPressure, siteAirPressure } from '@trochoid/compute/engine/fields.ts'
import { airPressure, boostPressure } from '@trochoid/compute/engine/quantities.ts'
import { standardAtmosphere } from '@trochoid/compute/media/standardAtmosphere.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Row = { readonly name: string; readonly absolute: number; readonly gauge: number }
type Data = { readonly outside: number; readonly rows: readonly Row[] } | null

const high = standardAtmosphere({ altitude: 2500 }).pressure

/** The same pressures counted from nothing and from the air outside, here and in thin air. */
export default figure<Data>({
  title: 'Two zeros',
  from({ sheet, solved: { points } }) {
    const outside = valueAt(sheet, siteAirPressure), idle = valueAt(sheet, idleManifoldPressure)
    const boosts = points.map((p) => p.values[boost.boost.path]).filter((v) => v !== undefined)
    if (outside === null || idle === null || boosts.length === 0) return null
    const most = Math.max(...boosts)
    const of = (name: string, absolute: number, around = outside): Row => ({ name, absolute, gauge: absolute - around })
    return { outside, rows: [of('Manifold at idle', idle), of('Air outside', outside), of('Manifold at most boost', outside + most), of('Outside, 2\u202f500 m up', high, high), of('Same boost up there', high + most, high)] }
  },
  summary(data, system) {
    if (!data) return 'This build has no outside pressure or no boost yet, so nothing is drawn.'
    const a = shown(airPressure, system), g = shown(boostPressure, system)
    const full = data.rows[2]!, up = data.rows[4]!
    return `A gauge counts from the air outside, so it reads nothing in the second and the fourth row. ${g.say(full.gauge)} on it are ${a.say(full.absolute)} here and ${a.say(up.absolute)} at 2\u202f500 m. The engine breathes the absolute pressure; a spring and a gauge feel the other.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const a = shown(airPressure, system), g = shown(boostPressure, system)
    return <Bars says="Absolute pressure of five places, with the air outside as a line." limit={{ at: a.of(data.outside), says: 'air outside, here' }}
      rows={data.rows.map(({ name, absolute, gauge }) => ({ name, says: `${a.say(absolute)}, ${g.say(Math.abs(gauge) < 1 ? 0 : gauge)}`, parts: [{ of: a.of(absolute), class: 'fill-accent' }] }))} />
  },
  table(data, system) {
    const a = shown(airPressure, system), g = shown(boostPressure, system)
    return { head: ['Where', a.head('Counted from nothing'), g.head('Counted from the air outside')], rows: (data?.rows ?? []).map((r) => [r.name, writeNumber(a.of(r.absolute)), Math.abs(r.gauge) < 1 ? '0' : writeNumber(g.of(r.gauge))]) }
  },
})
