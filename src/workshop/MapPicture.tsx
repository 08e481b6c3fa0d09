import { mapFaults } from '@trochoid/compute/boost/mapFaults.ts'
import { correctedFlow } from '@trochoid/compute/boost/quantities.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { mapFrame, MapPaper } from '../article/figures/plot/MapPaper.tsx'
import { drawn } from '../article/figures/plot/mapLines.ts'
import { Sheet } from '../article/figures/plot/Sheet.tsx'
import { shown } from '../article/figures/plot/shown.ts'

const below = [0.005, 0.02, 0.05, 0.1, 0.15]

/** A map drawn by the code that reads it, what looks wrong in it, and its points as a table. */
export function MapPicture({ map, system }: { map: CompressorMap; system: System }) {
  const found = mapFaults(map)
  const usable = found.every(({ weight }) => weight === 'doubt')
  const best = Math.max(...map.lines.flatMap(({ efficiency }) => efficiency))
  const paper = usable ? drawn(map, below.map((less) => Math.floor((best - less) * 100) / 100)) : null
  const on = paper && mapFrame(paper, system)
  const flow = shown(correctedFlow, system)
  const celsius = writeNumber(map.referenceTemperature - 273.15, 4)
  return (
    <figure>
      {paper && on && <Sheet says={`${map.name}: speed lines, surge, right edge and lines of equal efficiency.`} height={on.height} named={[{ name: 'surge', class: 'line' }, { name: 'right edge', class: 'axis' }, { name: 'speed line', class: 'thin' }]}><MapPaper map={paper} on={on} system={system} /></Sheet>}
      <figcaption>
        {map.name}{map.estimate ? ', an estimate' : ''}. Corrected to {celsius}&#8239;°C and {writeNumber(map.referencePressure / 1000, 4)}&#8239;kPa. Speed lines are marked in thousands of turns a minute, dashed lines with their efficiency in per cent.
        {usable ? '' : ' It is not drawn until what is wrong has been put right.'}
      </figcaption>
      {found.length > 0 && <ul class="small">{found.map(({ weight, says }) => <li key={says} class={weight === 'wrong' ? 'fault' : 'doubt'}><strong>{weight === 'wrong' ? 'Wrong' : 'Worth a look'}:</strong> {says}</li>)}</ul>}
      <details>
        <summary class="small">Table of the data</summary>
        <div class="scroll" tabindex={0} role="group" aria-label={`Points of ${map.name}`}>
          <table>
            <thead><tr><th class="n" scope="col">Speed, rpm</th><th class="n" scope="col">{flow.head()}</th><th class="n" scope="col">Pressure ratio</th><th class="n" scope="col">Efficiency, %</th></tr></thead>
            <tbody>{map.lines.flatMap((line) => line.flow.map((m, i) => (
              <tr key={`${line.speed} ${i}`}><th class="n" scope="row">{i === 0 ? writeNumber((line.speed * 30) / Math.PI, 5) : ''}</th><td class="n">{writeNumber(flow.of(m), 4)}</td><td class="n">{writeNumber(line.ratio[i]!, 4)}</td><td class="n">{writeNumber(line.efficiency[i]! * 100, 3)}</td></tr>
            )))}</tbody>
          </table>
        </div>
      </details>
    </figure>
  )
}
