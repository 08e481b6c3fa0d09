import { manifoldPressure } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { nozzleDrop, regulatorReference } from './quantities.ts'

/** Pressure across a nozzle at another manifold pressure: it stays where the regulator follows the manifold, and changes one for one where it does not. */
export const about = {
  name: 'Pressure across a nozzle at another manifold pressure',
  in: {
    drop: nozzleDrop, reference: regulatorReference, known: role(manifoldPressure, 'p_0', 'Manifold pressure at which it is known'), manifold: manifoldPressure,
  },
  out: role(nozzleDrop, 'Δp_m', 'Pressure across the nozzle there'),
  steps: ['Regulator referenced to the manifold: the pressure across the nozzle stays.', 'Regulator referenced to outside air: it falls by as much as the manifold pressure rises.'],
  source: ['derived', 'rail pressure less manifold pressure; what the lines lose is taken as unchanged'],
} as const satisfies About

export const dropAtManifold = formula<typeof about>('drop-at-manifold', {}, ({ drop, reference, known, manifold }) => (reference === 'manifold' ? drop : drop + known - manifold))
