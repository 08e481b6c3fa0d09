import { formula, type About } from '../formula/formula.ts'
import { dynamicViscosity, leakageFactor, oilDrop, oilFlow } from './quantities.ts'

/** Oil that a pressure drives through narrow gaps. */
export const about = {
  name: 'Leakage flow',
  in: { factor: leakageFactor, drop: oilDrop, viscosity: dynamicViscosity },
  out: oilFlow,
  equation: 'factor * drop / viscosity',
  source: ['definition', 'laminar flow is proportional to pressure and to the inverse of viscosity'],
} as const satisfies About

export const leakageFlow = formula<typeof about>('leakage-flow', {}, ({ factor, drop, viscosity }) => (factor * drop) / viscosity)
