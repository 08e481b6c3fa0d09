import { formula, type About } from '../formula/formula.ts'
import { filterArea, gasDensity, gasFlow, gasSpeed } from './quantities.ts'

/** Speed at which air meets a filter. */
export const about = {
  name: 'Face speed of a filter',
  in: { flow: gasFlow, density: gasDensity, area: filterArea },
  out: gasSpeed,
  equation: 'flow / (density * area)',
  source: ['definition', 'volume flow over area'],
} as const satisfies About

export const faceSpeed = formula<typeof about>('face-speed', {}, ({ flow, density, area }) => flow / (density * area))
