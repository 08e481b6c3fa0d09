import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { pulseWidth } from '../fuel/quantities.ts'
import { loadCurrent, primaryCount } from './quantities.ts'

/** Mean current of the injectors that pulse once a shaft turn. `z I t ω / (2 π)`, amperes. */
export const about = {
  name: 'Mean current of the injectors',
  in: { count: primaryCount, each: role(loadCurrent, 'I_1', 'Current of an open injector'), pulse: pulseWidth, speed: shaftSpeed },
  out: role(loadCurrent, 'I_i', 'Current of the injectors'),
  equation: 'count * each * pulse * speed / (2 * pi)',
  source: ['derived', 'share of the turn that they are open'],
  notes: 'The current while open is taken as even; a peak at opening is short.',
} as const satisfies About

export const injectorsMeanCurrent = formula<typeof about>('injectors-mean-current', {}, ({ count, each, pulse, speed }) => (count * each * pulse * speed) / (2 * Math.PI))
