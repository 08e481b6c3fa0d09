import { type About, formula } from '../formula/formula.ts'
import { fuelVolumeFlow, sessionTime, tankVolume } from './quantities.ts'

/** Time that a volume of fuel lasts at a flow. */
export const about = {
  name: 'Time on a tank',
  in: { fuel: tankVolume, flow: fuelVolumeFlow },
  out: sessionTime,
  equation: 'fuel / flow',
  sample: { flow: [1e-6, 2e-4] },
  source: ['definition', 'volume over flow'],
} as const satisfies About

export const fuelLasts = formula<typeof about>('fuel-lasts', {}, ({ fuel, flow }) => fuel / flow)
