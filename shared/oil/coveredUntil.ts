import { type About, formula } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { depthAtPickup } from './depthAtPickup.ts'
import { sideAcceleration, sumpLength, sumpOil } from './quantities.ts'
import { tiltOf } from './tiltOf.ts'

/** Largest steady acceleration under which the pick-up keeps the wanted depth. */
export const about = {
  name: 'Acceleration that is just covered',
  in: {
    volume: sumpOil, cover: role(sumpLength, 'h', 'Depth wanted over the pick-up'), length: role(sumpLength, 'l', 'Length of the sump along the acceleration'), width: role(sumpLength, 'b', 'Width of the sump across it'),
    place: role(sumpLength, 'x', 'Pick-up from the wall to which the oil runs'), height: role(sumpLength, 'z', 'Pick-up over the floor'),
  },
  out: sideAcceleration,
  steps: ['The depth at the pick-up falls as the tilt grows, unless the oil runs towards it.', 'The tilt is sought, up to two and a half times gravity, at which it is the wanted one. Where it never falls so far there is no such acceleration.'],
  source: ['derived', 'the depth at the pick-up solved for acceleration'],
} as const satisfies About

const most = 25
export const coveredUntil = formula<typeof about>('covered-until', {}, ({ volume, cover, ...sump }) => {
  const over = (acceleration: number): number => depthAtPickup({ ...sump, volume, tilt: tiltOf({ acceleration }) }) - cover
  const found = untraced(() => (over(0) > 0 && over(most) < 0 ? bracketedRoot(over, 0, most, 1e-6) : null))
  return found === null ? NaN : root('acceleration just covered', found.x, found.residual)
})
