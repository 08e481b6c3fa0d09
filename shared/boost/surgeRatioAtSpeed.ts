import { formula, type About } from '../formula/formula.ts'
import { gridAt } from '../numerics/grid.ts'
import { headExponent, mapGrid } from './mapGrid.ts'
import { compressorMap, correctedFlow, correctedSpeed, pressureRatio } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Where a speed line meets the surge line of a map. */
export const about = {
  name: 'Surge at a speed',
  in: { map: compressorMap, speed: correctedSpeed },
  out: { ratio: role(pressureRatio, 'π_s', 'Pressure ratio at surge, same speed'), flow: role(correctedFlow, 'm_s', 'Flow at surge, same speed') },
  steps: [
    'Read flow and isentropic head at the left end of the map’s grid, at this corrected speed; between lines by its monotone cubics.',
    'Below the lowest line flow goes with speed and head with its square.',
  ],
  source: ['fritsch-butland', 'monotone slopes; below the lowest line similarity of incompressible flow'],
  notes: 'Above the top line it goes straight on, which is no measurement.',
} as const satisfies About

const out = new Float64Array(3)

export const surgeRatioAtSpeed = formula<typeof about>('surge-ratio-at-speed', {}, ({ map, speed }) => {
  const g = mapGrid(map)
  const slow = Math.min(1, speed / g.lowest)
  gridAt(g.head, Math.max(speed, g.lowest), 0, out)
  const head = out[0]! * slow * slow
  gridAt(g.flow, Math.max(speed, g.lowest), 0, out)
  return { ratio: (1 + head) ** (1 / headExponent), flow: out[0]! * slow }
})
