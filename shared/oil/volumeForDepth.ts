import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { sumpLength, sumpOil, tiltAngle } from './quantities.ts'

/** Least oil in a box-shaped sump that keeps a wanted depth over the pick-up under a tilt. */
export const about = {
  name: 'Oil that keeps the pick-up covered',
  in: {
    cover: role(sumpLength, 'h', 'Depth wanted over the pick-up'), length: role(sumpLength, 'l', 'Length of the sump along the acceleration'), width: role(sumpLength, 'b', 'Width of the sump across it'),
    place: role(sumpLength, 'x', 'Pick-up from the wall to which the oil runs'), height: role(sumpLength, 'z', 'Pick-up over the floor'), tilt: tiltAngle,
  },
  out: role(sumpOil, 'V_min', 'Least oil that keeps the pick-up covered'),
  steps: ['Depth wanted over the floor is height of the pick-up and cover.', 'With the floor covered the mean depth follows from the tilt and the place.', 'If that would leave part of the floor bare, the volume is that of the wedge.'],
  source: ['derived', 'the depth at the pick-up solved for volume'],
} as const satisfies About

export const volumeForDepth = formula<typeof about>('volume-for-depth', {}, ({ cover, length, width, place, height, tilt }) => {
  const fall = Math.tan(tilt)
  const wanted = cover + height
  const mean = wanted - fall * (length / 2 - place)
  if (fall * length <= 2 * mean) return Math.max(0, mean) * length * width
  const wedge = place + wanted / fall
  return (width * fall * wedge * wedge) / 2
})
