import { formula, type About } from '../formula/formula.ts'
import { fuelFlow, stoichiometricRatio as ratioAtOne } from '../fuel/quantities.ts'
import { airFlow, lambda } from './quantities.ts'

/** Fuel that a flow of dry air asks for at a wanted lambda. */
export const about = {
  name: 'Fuel flow for an air flow',
  in: { airFlow, stoichiometricRatio: ratioAtOne, lambda },
  out: fuelFlow,
  equation: 'airFlow / (stoichiometricRatio * lambda)',
  source: ['definition', 'lambda is air taken in over air that the fuel needs to burn completely'],
  notes: 'Air is the dry part, which brings the oxygen; the ratio is by mass.',
} as const satisfies About

export const fuelFlowForAir = formula<typeof about>('fuel-flow-for-air', {}, ({ airFlow: air, stoichiometricRatio, lambda: ratio }) => air / (stoichiometricRatio * ratio))
