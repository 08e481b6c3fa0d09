import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { permissibleUnbalance, planeDistance } from './quantities.ts'

/** Share of an unbalance that falls to one of two planes: by the lever, the nearer plane gets more. `U L_far / L`, kg m. */
export const about = {
  name: 'Unbalance of one plane',
  in: { whole: permissibleUnbalance, far: role(planeDistance, 'L_2', 'Distance of the mass from the other plane'), span: role(planeDistance, 'L', 'Distance between the planes') },
  out: role(permissibleUnbalance, 'U_1', 'Unbalance of one plane'),
  equation: 'whole * far / span',
  source: ['iso-21940-11', 'clause 7, allocation to two planes'],
  notes: 'For a centre of mass between the planes; the standard bounds each share at 0.3 and 0.7 of the whole.',
  sample: { far: [mm(50), mm(500)], span: [mm(500), mm(1500)] },
} as const satisfies About

export const unbalanceOfPlane = formula<typeof about>('unbalance-of-plane', {}, ({ whole, far, span }) => (whole * far) / span)
