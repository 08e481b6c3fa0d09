import { carSpeedOf } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { fuelVolumeFlow, tankDistance, tankVolume } from './quantities.ts'

/** Distance that a volume of fuel lasts at a steady speed and flow. */
export const about = {
  name: 'Distance on a tank',
  in: { fuel: tankVolume, flow: fuelVolumeFlow, speed: carSpeedOf },
  out: tankDistance,
  equation: 'fuel / flow * speed',
  sample: { flow: [1e-6, 2e-4] },
  source: ['definition', 'time that the fuel lasts multiplied by speed'],
} as const satisfies About

export const distanceOnFuel = formula<typeof about>('distance-on-fuel', {}, ({ fuel, flow, speed }) => (fuel / flow) * speed)
