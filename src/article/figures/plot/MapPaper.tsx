import { correctedFlow, correctedSpeed, pressureRatio } from '@trochoid/compute/boost/quantities.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import type { ComponentChildren } from 'preact'
import { frame, type Frame } from './frame.ts'
import { Lines, type Spot } from './Lines.tsx'
import type { Drawn } from './mapLines.ts'
import { Axes, Words } from './Sheet.tsx'
import { shown } from './shown.ts'

/** Room for a map with something beside it: wide as its last line, high as its top. */
export function mapFrame(map: Drawn, system: System, height = 430): Frame {
  const flow = shown(correctedFlow, system)
  const spots = map.lines.flat()
  return frame({ x: [0, flow.of(Math.max(...spots.map(([x]) => x)))], y: [1, Math.max(...spots.map(([, y]) => y))], height })
}

/** The map itself: thin speed lines with their speeds, both edges, lines of equal efficiency. */
export function MapPaper({ map, on, system, speeds = true }: { map: Drawn; on: Frame; system: System; speeds?: boolean }): ComponentChildren {
  const flow = shown(correctedFlow, system), n = shown(correctedSpeed, system)
  const seen = (spots: readonly Spot[]): Spot[] => spots.map(([x, y]) => [flow.of(x), y])
  const named = (list: readonly (readonly Spot[])[], of: string, c: string) => list.map((spots, i) => ({ name: `${of} ${i}`, class: c, spots: seen(spots) }))
  const top = map.surge.at(-1)!
  return (<>
    <Axes on={on} x={flow.head()} y={pressureRatio.name} />
    <g opacity=".55" stroke-dasharray="3 3"><Lines on={on} of={named(map.islands.map((i) => i.spots), 'island', 'thin')} /></g>
    <Lines on={on} of={named(map.lines, 'speed', 'thin')} />
    <Lines on={on} of={[...named([map.surge], 'surge', 'line'), ...named([map.right], 'right', 'axis')]} />
    {map.islands.map(({ level, spots }, i) => {
      const [x, y] = spots[Math.floor(spots.length * 0.8)]!
      return <Words key={i} x={on.x.at(flow.of(x))} y={on.y.at(y) + 5} anchor="middle">{`${Math.round(100 * level)}`}</Words>
    })}
    {speeds && map.lines.map((spots, i) => {
      const [x, y] = spots.at(-1)!
      return i % 2 === 0 && <Words key={i} x={on.x.at(flow.of(x)) - 4} y={on.y.at(y) + 20} anchor="middle">{writeNumber(n.of(map.speeds[i]!) / 1000, 2)}</Words>
    })}
    <Words x={on.x.at(flow.of(top[0])) - 10} y={on.y.at(top[1]) + 24} anchor="end">surge</Words>
  </>)
}
