import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolerConductance, coreFilm, coreSurface, finEfficiencyOf } from './quantities.ts'

/** Bare tubes and fins together, the fins by their efficiency. */
export const about = {
  name: 'Conductance of the air’s side',
  in: { film: coreFilm, bare: role(coreSurface, 'A_t', 'Bare surface of the tubes'), fins: role(coreSurface, 'A_f', 'Surface of the fins'), efficiency: finEfficiencyOf },
  out: role(coolerConductance, 'UA_a', 'Conductance of the air’s side'),
  equation: 'film * (bare + efficiency * fins)',
  source: ['kays-london', 'overall surface efficiency'],
} as const satisfies About

export const airSideConductance = formula<typeof about>('air-side-conductance', {}, ({ film, bare, fins, efficiency }) => film * (bare + efficiency * fins))
