import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { lineLossOf } from './lineLossOf.ts'
import { fittingLoss, fuelDensity, fuelViscosity, fuelVolumeFlow, lineBore, lineLength, linePressureLoss, wallRoughness } from './quantities.ts'

/** Pressure that a line takes from a flow in its own direction; a flow the other way gains it. */
export const about = {
  name: 'Pressure loss of a line, either way',
  in: { flow: role(fuelVolumeFlow, 'Q_±', 'Flow, negative against the direction of the line'), bore: lineBore, length: lineLength, fittings: fittingLoss, roughness: wallRoughness, density: fuelDensity, viscosity: fuelViscosity },
  out: linePressureLoss,
  steps: ['The loss of the line is found for the size of the flow.', 'It has the sign of the flow.'],
  source: ['churchill-1977', 'friction factor for every flow; the sign by symmetry'],
} as const satisfies About

export const signedLineLoss = formula<typeof about>('signed-line-loss', {}, ({ flow, ...line }) => Math.sign(flow) * lineLossOf({ flow: Math.abs(flow), ...line }).loss)
