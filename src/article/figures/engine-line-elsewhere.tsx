import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { setEntry, valueAt } from '@trochoid/compute/build/sheet.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import { compressorMapOf } from '@trochoid/compute/boost/fields.ts'
import { correctedFlow, turboSpeed } from '@trochoid/compute/boost/quantities.ts'
import { siteAirPressure, siteAirTemperature } from '@trochoid/compute/engine/fields.ts'
import { chargeTemperature, power } from '@trochoid/compute/engine/quantities.ts'
import { standardAtmosphere } from '@trochoid/compute/media/standardAtmosphere.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { engineLine, type OnMap } from './plot/engineLine.ts'
import { Bold, Lines, long, type Named } from './plot/Lines.tsx'
import { mapFrame, MapPaper } from './plot/MapPaper.tsx'
import { drawn, type Drawn } from './plot/mapLines.ts'
import { Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Place = { name: string; line: OnMap[]; whole: boolean; flow: number; ratio: number; turbo: number; charge: number; power: number; choke: number; threshold: number }
type Data = { map: Drawn; places: Place[] } | null

const high = standardAtmosphere({ altitude: 2500 }).pressure
const hot = degC(40)
const names = ['Where the build stands', 'at 2\u202f500 m', 'at 40\u202f°C'] as const

/** What the fullest point says of a place; NaN where it has none. */
function place(name: string, solved: Solved): Place {
  const at = demoPoint(solved)
  const value = (path: string): number => at[path] ?? NaN
  const line = engineLine(solved.points)
  return { name, line, whole: line.length === solved.points.length, flow: value('boost.correctedFlow'), ratio: value('boost.pressureRatio'), turbo: value('boost.compressorSpeed'), charge: value('engine.chargeTemperature'), power: value('engine.power'), choke: value('boost.chokeMargin'), threshold: value('boost.thresholdSpeed') }
}

function from({ sheet, solved, beside }: Build): Data {
  const map = valueAt(sheet, compressorMapOf)
  return map ? { map: drawn(map), places: [solved, ...beside].map((s, i) => place(names[i]!, s)) } : null
}

/** Nearer than a map can be read. */
const close = (a: Place, b: Place): boolean => Math.abs(a.flow / b.flow - 1) < 0.06 && Math.abs(a.ratio / b.ratio - 1) < 0.03

export default figure<Data>({
  title: 'The same engine, the same boost, other air',
  beside: (sheet) => [setEntry(sheet, siteAirPressure.path, { value: high }), setEntry(sheet, siteAirTemperature.path, { value: hot })],
  from,
  summary(data, system) {
    const [here, up, warm] = data?.places ?? []
    if (!here || !up || !warm || here.line.length === 0) return 'This build has no compressor map or no full-throttle point, so nothing is drawn.'
    const flow = shown(correctedFlow, system), t = shown(chargeTemperature, system), n = shown(turboSpeed, system), p = shown(power, system)
    const partly = [up, warm].filter((one) => !one.whole).map((one) => ` The line ${one.name} is not whole: at some speeds that place lies off the map.`)
    return `Solved anew for each. In the thin air of 2\u202f500 m the same boost on the gauge is a ratio of ${writeNumber(up.ratio)} instead of ${writeNumber(here.ratio)} at the point of most power; the map counts ${flow.say(up.flow)} instead of ${flow.say(here.flow)}, and the turbocharger turns at ${n.say(up.turbo)} instead of ${n.say(here.turbo)}. On a day of 40\u202f°C it is ${flow.say(warm.flow)} at ${writeNumber(warm.ratio)}${close(warm, here) ? ': the line hardly moves. What moves is' : '; and'} the charge, from ${t.say(here.charge)} to ${t.say(warm.charge)}, and the power, from ${p.say(here.power)} to ${p.say(warm.power)}.${partly.join('')}`
  },
  Picture({ data, system }) {
    if (!data || data.places[0]!.line.length < 2) return null
    const flow = shown(correctedFlow, system)
    const on = mapFrame(data.map, system)
    const lines = data.places.map(({ name, line }, i): Named => ({ name, class: ['line two', 'line dash', 'line'][i]!, dash: i === 2 ? long : undefined, spots: line.map((p) => [flow.of(p.flow), p.ratio]) }))
    return (
      <Sheet says="Compressor map with the engine’s line as the build stands, at 2,500 metres and at 40 degrees." height={on.height} named={lines}>
        <MapPaper map={data.map} on={on} system={system} speeds={false} />
        <Bold on={on} of={lines[0]!.spots} />
        <Lines on={on} of={lines.slice(1)} />
      </Sheet>
    )
  },
  table(data, system) {
    const flow = shown(correctedFlow, system), t = shown(chargeTemperature, system), n = shown(turboSpeed, system), p = shown(power, system)
    const cell = (value: number, say: (si: number) => string): string => (Number.isFinite(value) ? say(value) : 'none')
    return {
      head: ['At the point of most power', 'Pressure ratio', 'Corrected flow', 'Turbo speed', 'Left to the right edge', 'Charge', 'Power'],
      rows: (data?.places ?? []).map((one) => [one.name, cell(one.ratio, writeNumber), cell(one.flow, flow.say), cell(one.turbo, n.say), cell(one.choke, (v) => `${writeNumber(100 * v, 2)}\u202f%`), cell(one.charge, t.say), cell(one.power, p.say)]),
    }
  },
})
