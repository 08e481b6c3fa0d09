import { compressorMapOf } from '@trochoid/compute/boost/fields.ts'
import { compressorEfficiency, correctedFlow, correctedSpeed } from '@trochoid/compute/boost/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { mapFrame, MapPaper } from './plot/MapPaper.tsx'
import { drawn, type Drawn } from './plot/mapLines.ts'
import { Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Line = { speed: number; surge: readonly [flow: number, ratio: number]; end: readonly [flow: number, ratio: number]; best: number }
type Data = { name: string; map: Drawn; lines: Line[] } | null

function from({ sheet }: Build): Data {
  const map = valueAt(sheet, compressorMapOf)
  return map && {
    name: map.name, map: drawn(map, [0.6, 0.65, 0.7, 0.75]),
    lines: map.lines.map(({ speed, flow, ratio, efficiency }) => ({ speed, surge: [flow[0]!, ratio[0]!], end: [flow.at(-1)!, ratio.at(-1)!], best: Math.max(...efficiency) })),
  }
}

export default figure<Data>({
  title: 'A compressor map and its four kinds of line',
  from,
  summary(data, system) {
    const last = data?.lines.at(-1)
    if (!data || !last) return 'This build has no compressor map, so nothing is drawn.'
    const f = shown(correctedFlow, system), n = shown(correctedSpeed, system)
    return `${data.name}. Heavy at the left: surge. Thin across: one shaft speed each, marked in thousands of turns a minute. Dashed rings: equal efficiency, in per cent. At the right the measured flow ends. The fastest line, ${n.say(last.speed)}, reaches from ${f.say(last.surge[0])} at a ratio of ${writeNumber(last.surge[1])} to ${f.say(last.end[0])} at ${writeNumber(last.end[1])}.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const f = shown(correctedFlow, system), on = mapFrame(data.map, system), [x, y] = data.lines.at(-1)!.surge
    return (
      <Sheet says="A compressor map: surge line, speed lines, rings of equal efficiency and the right edge." height={on.height} named={[{ name: 'surge', class: 'line' }, { name: 'speed lines', class: 'thin' }, { name: 'equal efficiency', class: 'thin', dash: '3 3' }, { name: 'right edge', class: 'axis' }]}>
        <MapPaper map={data.map} on={on} system={system} />
        <Words x={on.x.at(f.of(x)) + 8} y={on.y.at(y) - 8}>fastest line</Words>
      </Sheet>
    )
  },
  table(data, system) {
    const f = shown(correctedFlow, system), n = shown(correctedSpeed, system), e = shown(compressorEfficiency, system)
    return { head: [n.head(), f.head('Flow at surge'), 'Ratio at surge', f.head('Flow at the right edge'), 'Ratio there', e.head('Best efficiency')], rows: (data?.lines ?? []).map((l) => [writeNumber(n.of(l.speed)), writeNumber(f.of(l.surge[0])), writeNumber(l.surge[1]), writeNumber(f.of(l.end[0])), writeNumber(l.end[1]), writeNumber(e.of(l.best))]) }
  },
})
