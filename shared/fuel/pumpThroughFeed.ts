import { formula, type About } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { lineLossOf } from './lineLossOf.ts'
import { pressureUpstream } from './pressureUpstream.ts'
import { pumpFlowAtPressure } from './pumpFlowAtPressure.ts'
import { pumpFlowAtVoltage } from './pumpFlowAtVoltage.ts'
import { fittingLoss, fuelDensity, fuelViscosity, lineBore, lineLength, pumpFlow, pumpPressure, pumps, pumpVoltage, railPressure, voltageExponent, wallRoughness } from './quantities.ts'

/** Flow and pressure at which pump and feed agree, where all the pump gives runs through the feed to a regulator at its end. */
export const about = {
  name: 'Pump working through its feed',
  in: {
    held: role(railPressure, 'p_reg', 'Pressure held at the end of the feed'), bore: lineBore, length: lineLength, fittings: fittingLoss, roughness: wallRoughness, density: fuelDensity, viscosity: fuelViscosity,
    flow: role(pumpFlow, 'Q_1', 'Flow at the first pressure'), at: role(pumpPressure, 'p_1', 'First rated pressure'),
    secondFlow: role(pumpFlow, 'Q_2', 'Flow at the second pressure'), secondAt: role(pumpPressure, 'p_2', 'Second rated pressure'),
    number: pumps, voltage: pumpVoltage, ratedVoltage: role(pumpVoltage, 'U_0', 'Rated voltage'), exponent: voltageExponent,
  },
  out: { flow: pumpFlow, pressure: pumpPressure },
  steps: ['The pressure at the pump is what is held at the end of the feed and what the feed loses.', 'The pump’s line over pressure and its voltage give a flow.', 'The flow is sought at which both agree. A pump that gives nothing at the held pressure gives nothing.'],
  source: ['derived', 'pump line and line loss meet'],
} as const satisfies About

export const pumpThroughFeed = formula<typeof about>('pump-through-feed', {}, ({ held, bore, length, fittings, roughness, density, viscosity, flow, at, secondFlow, secondAt, number, voltage, ratedVoltage, exponent }) => {
  const pumped = (through: number): { flow: number; pressure: number } => {
    const { loss } = lineLossOf({ flow: through, bore, length, fittings, roughness, density, viscosity })
    const pressure = pressureUpstream({ after: held, loss })
    return { flow: pumpFlowAtVoltage({ flow: pumpFlowAtPressure({ pressure, flow, at, secondFlow, secondAt }), number, voltage, ratedVoltage, exponent }), pressure }
  }
  const free = untraced(() => pumped(0))
  // Written so that a voltage or a curve that makes no number ends here too.
  if (!(free.flow > 0)) return { flow: 0, pressure: held }
  const found = untraced(() => bracketedRoot((q) => q - pumped(q).flow, 0, free.flow, free.flow * 1e-10))
  return { flow: root('flow through the feed', found.x, found.residual), pressure: pumped(found.x).pressure }
})
