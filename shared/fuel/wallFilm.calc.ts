import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { lambda, manifoldPressure, shaftSpeed } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { kPa, rpm } from '../quantity/si.ts'
import { handoverLambda } from './fields.ts'
import { fuelAtHandover } from './fuelAtHandover.ts'
import { fuelLack } from './fuelLack.ts'
import { lambdaOfFuelChange } from './lambdaOfFuelChange.ts'
import { at } from './point.ts'
import { filmFuel, fuelSpread, wallShare, wallTime } from './quantities.ts'
import { turnTimeOf } from './turnTimeOf.ts'
import { wallDelivered } from './wallDelivered.ts'
import { wallSettled } from './wallSettled.ts'
import { wallStored } from './wallStored.ts'

export default calculation({
  id: 'wall-film',
  title: 'Tip-in: fuel for the walls',
  theme: 'fuel',
  asks: 'When the throttle opens, how lean is the first charge without enrichment, and how much extra fuel do the walls take, with two stages and with one rail upstream?',
  article: 'one-rail-or-two',
  cautions: ['fuel-vapour', 'knock', 'model-only'],
  in: {
    fuel: at.fuelPerCharge, full: engine.manifold, lambda: engine.lambda, speed: free(shaftSpeed, rpm(2500), 'Shaft speed of the tip-in'), wanted: handoverLambda,
    from: free(manifoldPressure, kPa(45), 'Manifold pressure before'), to: free(manifoldPressure, kPa(85), 'Manifold pressure after'), lack: free(fuelSpread, 0.02, 'Lack of fuel that is let pass'),
    wall: free(wallShare, 0.25, 'Share that wets the wall, primaries near the port'), settling: free(wallTime, 0.25, 'Settling time of that film'),
    farWall: free(wallShare, 0.5, 'Share that wets the wall, one rail upstream'), farSettling: free(wallTime, 0.6, 'Settling time of the film upstream'),
  },
  out: {
    lean: role(lambda, 'λ_1', 'First charge, two stages'), extra: role(filmFuel, 'm_f1', 'Extra fuel per rotor, two stages'), settled: role(wallTime, 't_s1', 'Time until it is back, two stages'),
    farLean: role(lambda, 'λ_2', 'First charge, one rail upstream'), farExtra: role(filmFuel, 'm_f2', 'Extra fuel per rotor, one rail upstream'), farSettled: role(wallTime, 't_s2', 'Time until it is back, one rail upstream'),
  },
  curve: ['to', 'lean'],
  answer({ fuel, full, lambda, speed, wanted, from, to, lack, wall, settling, farWall, farSettling }) {
    if (!(to > from)) throw new NoAnswer('wall-film', 'The manifold pressure after the tip-in has to be above the one before.')
    const before = fuelAtHandover({ fuel, manifold: full, handover: from, lambda, handoverLambda: wanted })
    const after = fuelAtHandover({ fuel, manifold: full, handover: to, lambda, handoverLambda: wanted })
    const turn = turnTimeOf({ speed })
    const first = (share: number, time: number): number => lambdaOfFuelChange({ lambda: wanted, change: fuelLack({ arrives: wallDelivered({ before, after, wall: share, settling: time, time: 0 }), meant: after }) })
    return {
      lean: first(wall, settling), extra: wallStored({ before, after, wall, settling, turn }), settled: wallSettled({ before, after, wall, settling, lack }),
      farLean: first(farWall, farSettling), farExtra: wallStored({ before, after, wall: farWall, settling: farSettling, turn }), farSettled: wallSettled({ before, after, wall: farWall, settling: farSettling, lack }),
    }
  },
  says: () => 'From {from} to {to} at {speed} the first charge would run at lambda {lean} where {wanted} was meant, for {settled}; the walls take {extra} of extra fuel for each rotor. One rail upstream would start at {farLean}, want {farExtra} and be back after {farSettled}, its way to the port not counted.',
  leavesOut: 'Shares and times are common practice without a source: log a tip-in to find yours. The air’s own filling of the manifold, the way from rail to port, and how cold walls hold more.',
})
