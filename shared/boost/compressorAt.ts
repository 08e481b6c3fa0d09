import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { headOf, mapGrid } from './mapGrid.ts'
import { edgeFlow } from './mapEdges.ts'
import { lowestLinePlace, mapPlace } from './mapPlace.ts'
import { compressorEfficiency, compressorMap, correctedFlow, correctedSpeed, estimatedOnMap, outsideMap, pressureRatio } from './quantities.ts'
import { gridAt } from '../numerics/grid.ts'

/**
 * Reads a compressor map at a corrected flow and a pressure ratio: corrected speed, efficiency, and the flows at the map's left
 * and right edge at the same ratio. `outside` is 0 inside the map, 1 beyond surge, 2 beyond choke, 3 above the top speed line;
 * there the numbers only lead a solver through and are no answer. `estimated` is 1 below the lowest line.
 */
export const about = {
  name: 'Reading of a compressor map',
  in: { map: compressorMap, flow: correctedFlow, ratio: pressureRatio },
  out: {
    speed: correctedSpeed, efficiency: compressorEfficiency, surgeFlow: role(correctedFlow, 'm_s', 'Flow at surge, same pressure ratio'),
    chokeFlow: role(correctedFlow, 'm_k', 'Flow at the right edge of the map, same pressure ratio'), outside: outsideMap, estimated: estimatedOnMap,
  },
  steps: [
    'Hold each pressure ratio as the isentropic temperature rise over inlet temperature, h = π^((γ-1)/γ) - 1.',
    'Give each point of a speed line a place between 0 at surge and 1 at choke, by the length walked along the drawn line; carry flow, h and efficiency over place by monotone cubics.',
    'Carry each of the three over speed, at equal place, by monotone cubics: speed lines then neither cross nor overshoot.',
    'Find by Newton steps the speed and place at which the grid has the wanted flow and h; read efficiency there.',
    'Below the lowest line, keep that line’s flow over speed, h over speed squared and efficiency at each place: an estimate, which comes down to ratio 1 at rest.',
    'Beyond surge and choke and above the top line go straight on with the end slopes, efficiency bending off before zero, and say on which side the point lies.',
  ],
  source: ['fritsch-butland', 'monotone slopes; the grid of speed and place is derived here, the estimate below the lowest line is similarity of incompressible flow'],
  notes: 'Source states no range. A ratio below 1 is read as 1. Flow and ratio are those of the map’s own reference temperature and pressure.',
} as const satisfies About

const out = new Float64Array(3)

export const compressorAt = formula<typeof about>('compressor-at', {}, ({ map, flow, ratio }) => {
  const g = mapGrid(map)
  const head = ratio > 1 ? headOf(ratio) : 0
  const m = flow > 1e-9 ? flow : 1e-9
  const low = lowestLinePlace(g, m, head)
  const estimated = low.speed < g.lowest ? 1 : 0
  const { speed, place } = estimated ? low : mapPlace(g, m, head, low)
  gridAt(g.efficiency, estimated ? g.lowest : speed, place, out)
  return {
    speed, efficiency: keptAboveZero(out[0]!, g.lowEfficiency), surgeFlow: edgeFlow(g.surge, head), chokeFlow: edgeFlow(g.right, head),
    outside: speed > g.top * (1 + 1e-9) ? 3 : place < -1e-9 ? 1 : place > 1 + 1e-9 ? 2 : 0, estimated,
  }
})

/** Below `low` it bends off smoothly towards half of it. */
const keptAboveZero = (efficiency: number, low: number): number =>
  efficiency >= low ? Math.min(efficiency, 0.95) : low / 2 + (low / 2) * Math.exp((efficiency - low) / (low / 2))
