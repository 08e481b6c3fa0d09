import { type About, formula } from '../formula/formula.ts'
import { faceSpeed, filterArea, fuelVolumeFlow } from './quantities.ts'

/** Speed at which fuel meets the medium of a filter. */
export const about = {
  name: 'Face speed of a filter',
  in: { flow: fuelVolumeFlow, area: filterArea },
  out: faceSpeed,
  equation: 'flow / area',
  source: ['definition', 'flow over area'],
} as const satisfies About

export const faceSpeedOf = formula<typeof about>('face-speed-of', {}, ({ flow, area }) => flow / area)
