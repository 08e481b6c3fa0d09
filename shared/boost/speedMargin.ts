import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { speedShare, turboSpeed } from './quantities.ts'

/** Turbocharger speed as a share of the highest permitted. */
export const about = {
  name: 'Share of the permitted turbocharger speed',
  in: { speed: turboSpeed, limit: role(turboSpeed, 'n_max', 'Highest permitted turbocharger speed') },
  out: speedShare,
  equation: 'speed / limit',
  source: ['definition', 'speed over permitted speed'],
} as const satisfies About

export const speedMargin = formula<typeof about>('speed-margin', {}, ({ speed, limit }) => speed / limit)
