import { formula, type About } from '../formula/formula.ts'
import { churchillFriction } from './churchillFriction.ts'
import { fittingLossOf } from './fittingLossOf.ts'
import { frictionLossOf } from './frictionLossOf.ts'
import { lineReynolds } from './lineReynolds.ts'
import { lineSpeedOf } from './lineSpeedOf.ts'
import { fittingLoss, frictionFactor, fuelDensity, fuelViscosity, fuelVolumeFlow, lineBore, lineLength, linePressureLoss, lineSpeed, pipeReynolds, wallRoughness } from './quantities.ts'
import { relativeRoughnessOf } from './relativeRoughnessOf.ts'

/** Pressure that a flow of fuel loses along a line with its fittings. No flow loses nothing. */
export const about = {
  name: 'Pressure loss of a line',
  in: { flow: fuelVolumeFlow, bore: lineBore, length: lineLength, fittings: fittingLoss, roughness: wallRoughness, density: fuelDensity, viscosity: fuelViscosity },
  out: { loss: linePressureLoss, speed: lineSpeed, reynolds: pipeReynolds, friction: frictionFactor },
  steps: ['Speed follows from flow and bore, the Reynolds number from speed.', 'Churchill’s equation gives the friction factor.', 'Friction along the length and the losses of the fittings add.'],
  source: ['churchill-1977', 'friction factor for every flow'],
  notes: 'Bends of a hose, swellings at its fittings and the pulses of the injectors are left out.',
} as const satisfies About

export const lineLossOf = formula<typeof about>('line-loss-of', {}, ({ flow, bore, length, fittings, roughness, density, viscosity }) => {
  if (flow <= 0) return { loss: 0, speed: 0, reynolds: 0, friction: 0 }
  const speed = lineSpeedOf({ flow, bore })
  const reynolds = lineReynolds({ density, speed, bore, viscosity })
  const friction = churchillFriction({ reynolds, relativeRoughness: relativeRoughnessOf({ roughness, bore }) })
  const loss = frictionLossOf({ friction, length, bore, density, speed }) + fittingLossOf({ coefficient: fittings, density, speed })
  return { loss, speed, reynolds, friction }
})
