import { formula, type About } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { lineLossOf } from './lineLossOf.ts'
import { fittingLoss, fuelDensity, fuelViscosity, fuelVolumeFlow, lineBore, lineLength, nozzleDrop, pumpFlow, railPressure, wallRoughness } from './quantities.ts'

/** Greatest flow that a wide-open regulator and its return pass before the rail rises above what it should be. */
export const about = {
  name: 'Flow the regulator and its return can pass',
  in: {
    held: role(railPressure, 'p_reg', 'Pressure to be held'), fullFlow: role(pumpFlow, 'Q_v', 'Flow of the wide-open regulator'), fullDrop: role(nozzleDrop, 'Δp_v', 'Pressure across it at that flow'),
    bore: lineBore, length: lineLength, fittings: fittingLoss, roughness: wallRoughness, density: fuelDensity, viscosity: fuelViscosity,
  },
  out: role(fuelVolumeFlow, 'Q_b', 'Flow the regulator and its return can pass'),
  steps: ['The open regulator loses pressure with the square of its flow, from one measured point.', 'The return loses pressure by friction and fittings; the tank is at outside pressure.', 'The flow is sought at which both together use up the pressure to be held.'],
  source: ['derived', 'losses in series'],
} as const satisfies About

export const bypassCapacityOf = formula<typeof about>('bypass-capacity-of', {}, ({ held, fullFlow, fullDrop, bore, length, fittings, roughness, density, viscosity }) => {
  if (!(held > 0)) return 0
  // Alone, without any return line, the open regulator would pass this much: the answer lies below. A hair more keeps rounding out of the bracket.
  const alone = fullFlow * Math.sqrt(held / fullDrop) * 1.001
  const lost = (flow: number): number => fullDrop * (flow / fullFlow) ** 2 + lineLossOf({ flow, bore, length, fittings, roughness, density, viscosity }).loss
  const found = untraced(() => bracketedRoot((q) => lost(q) - held, 0, alone, alone * 1e-10))
  return root('flow of the open regulator', found.x, found.residual)
})
