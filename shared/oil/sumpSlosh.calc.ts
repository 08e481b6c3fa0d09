import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { litre, mm } from '../quantity/si.ts'
import { coveredUntil } from './coveredUntil.ts'
import { depthAtPickup } from './depthAtPickup.ts'
import { oilToSpare } from './oilToSpare.ts'
import { oilDepth, oilSpare, sideAcceleration, sumpLength, sumpOil, tiltAngle } from './quantities.ts'
import { tiltOf } from './tiltOf.ts'
import { volumeForDepth } from './volumeForDepth.ts'

export default calculation({
  id: 'sump-slosh', title: 'Sump under acceleration', theme: 'oil',
  asks: 'Does the pick-up stay covered in a long corner or under braking, and how much oil is truly usable?',
  article: 'flow-and-pressure', cautions: ['hot-oil', 'model-only'],
  in: {
    volume: free(sumpOil, litre(4)), away: free(sumpOil, litre(1), 'Oil that is on its way round, not in the sump'), length: free(sumpLength, mm(420), 'Length of the sump along the acceleration'), width: free(sumpLength, mm(220), 'Width of the sump across it'),
    place: free(sumpLength, mm(260), 'Pick-up from the wall to which the oil runs'), height: free(sumpLength, mm(10), 'Pick-up over the floor'), cover: free(sumpLength, mm(15), 'Depth wanted over the pick-up'), acceleration: free(sideAcceleration, 9.8),
  },
  out: { tilt: tiltAngle, depth: oilDepth, least: role(sumpOil, 'V_min', 'Least oil that keeps the pick-up covered'), usable: oilSpare, until: role(sideAcceleration, 'a_max', 'Acceleration at which it just stays covered') },
  curve: ['acceleration', 'depth'],
  mayLack: ['until'],
  answer({ volume, away, length, width, place, height, cover, acceleration }) {
    if (!(length > 0) || !(width > 0)) throw new NoAnswer('sump-slosh', 'A sump without length or width holds nothing.')
    const inSump = oilToSpare({ volume, least: away })
    if (!(inSump > 0)) throw new NoAnswer('sump-slosh', 'All the oil is on its way round: the sump is empty.')
    const tilt = tiltOf({ acceleration })
    const sump = { length, width, place, height }
    const least = volumeForDepth({ ...sump, cover, tilt })
    return { tilt, depth: depthAtPickup({ ...sump, volume: inSump, tilt }), least, usable: oilToSpare({ volume: inSump, least }), until: coveredUntil({ ...sump, volume: inSump, cover }) }
  },
  says: ({ depth, cover }) => depth < 0
    ? 'At {acceleration} the surface tilts by {tilt} and the pick-up draws air: it would take {least} in the sump to cover it. A gate, a taller sump, or the pick-up nearer the wall.'
    : depth < cover ? 'At {acceleration} {depth} are left over the pick-up, less than wanted: {least} in the sump would do.' : 'At {acceleration} {depth} stay over the pick-up and {usable} could be missing before it runs short.',
  leavesOut: 'Oil thrown about by the shaft, foam, gates and trap doors, and the first wave, which is higher than the steady tilt.',
})
