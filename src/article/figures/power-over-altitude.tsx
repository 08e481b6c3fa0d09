import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { setEntry, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import { boostTargetCurve } from '@trochoid/compute/boost/fields.ts'
import { turboSpeed } from '@trochoid/compute/boost/quantities.ts'
import { siteAirPressure } from '@trochoid/compute/engine/fields.ts'
import { power } from '@trochoid/compute/engine/quantities.ts'
import { geopotentialAltitude } from '@trochoid/compute/media/quantities.ts'
import { standardAtmosphere } from '@trochoid/compute/media/standardAtmosphere.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Found = { power: number; ratio: number; turbo: number }
type Here = { altitude: number; gauge: Found; absolute: Found }
type Data = { all: Here[] }

const altitudes = steps(0, 2500, 5)
const outside = (altitude: number): number => standardAtmosphere({ altitude }).pressure

/** The build at a height: with the boost it has on the gauge, or with as much more as the air outside is short of. */
function at(sheet: Sheet, altitude: number, absolute: boolean): Sheet {
  const there = setEntry(sheet, siteAirPressure.path, { value: outside(altitude) })
  const target = valueAt(sheet, boostTargetCurve)
  if (!absolute || !target) return there
  const short = outside(0) - outside(altitude)
  return setEntry(there, boostTargetCurve.path, { value: { ...target, y: target.y.map((boost) => boost + short) } })
}

function found(solved: Solved): Found {
  const point = demoPoint(solved)
  return { power: point['engine.power'] ?? NaN, ratio: point['boost.pressureRatio'] ?? NaN, turbo: point['boost.compressorSpeed'] ?? NaN }
}

export default figure<Data>({
  title: 'The same build, carried up a mountain',
  beside: (sheet) => altitudes.flatMap((altitude) => [at(sheet, altitude, false), at(sheet, altitude, true)]),
  from: ({ beside }: Build) => ({ all: altitudes.map((altitude, i) => ({ altitude, gauge: found(beside[2 * i]!), absolute: found(beside[2 * i + 1]!) })) }),
  summary({ all }, system) {
    const low = all[0]!, high = all.at(-1)!
    if (![low.gauge.power, high.gauge.power].every(Number.isFinite)) return 'This build has no full-throttle point at one end, so nothing is said of it.'
    const p = shown(power, system), h = shown(geopotentialAltitude, system), n = shown(turboSpeed, system)
    const held = Number.isFinite(high.absolute.power) ? ` Held to the same absolute pressure it keeps ${p.say(high.absolute.power)}, at a ratio of ${writeNumber(high.absolute.ratio)} and ${n.say(high.absolute.turbo)} of the turbocharger against ${n.say(low.gauge.turbo)} by the sea.` : ' The same absolute pressure is beyond what its compressor map shows.'
    return `Solved anew at each height, at the build’s own air temperature. With its boost on the gauge the engine goes from ${p.say(low.gauge.power)} by the sea to ${p.say(high.gauge.power)} at ${h.say(high.altitude)}.${held}`
  },
  Picture({ data: { all }, system }) {
    const p = shown(power, system), h = shown(geopotentialAltitude, system)
    const over = (of: 'gauge' | 'absolute'): Spot[] => all.flatMap((x): Spot[] => (Number.isFinite(x[of].power) ? [[h.of(x.altitude), p.of(x[of].power)]] : []))
    return <Curves says="Greatest power over altitude, with boost held on the gauge and with absolute pressure held." x={h.head()} y={p.head('Power')} reach={[0]}
      lines={[{ name: 'Same boost on the gauge', class: 'line', spots: over('gauge') }, { name: 'Same absolute pressure', class: 'line two', dash: long, spots: over('absolute') }]} />
  },
  table({ all }, system) {
    const p = shown(power, system), h = shown(geopotentialAltitude, system), n = shown(turboSpeed, system)
    const cell = (value: number, say: (si: number) => string): string => (Number.isFinite(value) ? say(value) : 'none')
    const three = (of: Found): string[] => [cell(of.power, p.say), cell(of.ratio, writeNumber), cell(of.turbo, n.say)]
    return { head: [h.head(), 'Power, same gauge', 'Ratio', 'Turbo speed', 'Power, same absolute', 'Ratio', 'Turbo speed'], rows: all.map((x) => [writeNumber(h.of(x.altitude)), ...three(x.gauge), ...three(x.absolute)]) }
  },
})
