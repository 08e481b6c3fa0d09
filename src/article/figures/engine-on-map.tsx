import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { compressorMapOf } from '@trochoid/compute/boost/fields.ts'
import { correctedFlow, flowMargin } from '@trochoid/compute/boost/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { byTrust, engineLine, nearest, type OnMap } from './plot/engineLine.ts'
import { Bold, type Named } from './plot/Lines.tsx'
import { mapFrame, MapPaper } from './plot/MapPaper.tsx'
import { drawn, type Drawn } from './plot/mapLines.ts'
import { Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Edge = { speed: number; left: number }
type Data = { name: string; map: Drawn; line: OnMap[]; missing: number; surge: Edge | null; choke: Edge | null; threshold: number | null } | null

function from({ sheet, solved }: Build): Data {
  const map = valueAt(sheet, compressorMapOf)
  if (!map) return null
  const line = engineLine(solved.points)
  const worst = (path: string): Edge | null => solved.points.reduce<Edge | null>((a, { speed, values }) => {
    const left = values[path]
    return left !== undefined && (values['boost.overLowestLine'] ?? 0) >= 1 && left < (a?.left ?? Infinity) ? { speed, left } : a
  }, null)
  return { name: map.name, map: drawn(map, [0.6, 0.7, 0.75]), line, missing: solved.points.length - line.length, surge: worst('boost.surgeMargin'), choke: worst('boost.chokeMargin'), threshold: solved.build['boost.thresholdSpeed'] ?? null }
}

export default figure<Data>({
  title: 'The engine on its compressor map',
  from,
  summary(data, system) {
    if (!data || data.line.length === 0) return 'This build has no compressor map or no full-throttle point, so nothing is drawn.'
    const s = shown(shaftSpeed, system), m = shown(flowMargin, system)
    const edge = (of: Edge | null, words: string): string => (of ? ` ${words} at ${s.say(of.speed)}: ${m.say(of.left, 2)}.` : '')
    return `${data.name}. Thin: speed lines, marked in thousands of turns a minute; dashed: equal efficiency, in per cent. The engine climbs the map while boost builds and then goes right, nearly level, as it takes more air.${edge(data.surge, 'It comes nearest to surge')}${edge(data.choke, 'The right edge is nearest')}${data.line[0]!.estimated ? ' Dashed, it lies below the lowest speed line and is an estimate.' : ''}${data.missing > 0 ? ` At ${data.missing} of the speeds it lies off the map or has no solution.` : ''}`
  },
  Picture({ data, system }) {
    if (!data || data.line.length < 2) return null
    const flow = shown(correctedFlow, system), s = shown(shaftSpeed, system)
    const on = mapFrame(data.map, system)
    const { known, estimated } = byTrust(data.line)
    const spots = (line: readonly OnMap[]): Named['spots'] => line.map((p) => [flow.of(p.flow), p.ratio])
    const lines: Named[] = [{ name: 'Engine, full throttle', class: 'line two', spots: spots(known) }, { name: 'below the lowest line: an estimate', class: 'line two dash', spots: spots(estimated) }]
    const last = data.line.at(-1)!
    const marks = [...new Set([data.threshold === null ? undefined : nearest(data.line, data.threshold), nearest(data.line, (data.line[0]!.speed + last.speed) / 2), last])].filter((p) => p !== undefined)
    return (
      <Sheet says="Compressor map with the engine’s full-throttle line over it." height={on.height} named={[...lines, { name: 'right edge', class: 'axis' }]}>
        <MapPaper map={data.map} on={on} system={system} />
        <Bold on={on} of={spots(known)} />
        <Bold on={on} of={spots(estimated)} dash />
        {marks.map((p) => <circle key={p.speed} class="mark" r="5" cx={on.x.at(flow.of(p.flow))} cy={on.y.at(p.ratio)} />)}
        {marks.map((p, i) => <Words key={p.speed} x={on.x.at(flow.of(p.flow)) + (i === 0 ? -10 : 0)} y={on.y.at(p.ratio) + [-8, 28, -14][i]!} anchor={i === 0 ? 'end' : 'middle'} strong>{s.say(p.speed, 2)}</Words>)}
      </Sheet>
    )
  },
  table(data, system) {
    const s = shown(shaftSpeed, system), flow = shown(correctedFlow, system)
    return { head: [s.head(), flow.head(), 'Pressure ratio', 'On the map'], rows: (data?.line ?? []).filter((_, i) => i % 4 === 3).map((p) => [writeNumber(s.of(p.speed)), writeNumber(flow.of(p.flow)), writeNumber(p.ratio), p.estimated ? 'estimate' : 'between lines']) }
  },
})
