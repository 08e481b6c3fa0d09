import { formula, type About } from '../formula/formula.ts'
import { wireCurrent, wireHeat, wireResistance } from './quantities.ts'

/** Heat made in a wire. `I² R`, watts. */
export const about = {
  name: 'Heat made in a wire',
  in: { current: wireCurrent, resistance: wireResistance },
  out: wireHeat,
  equation: 'current^2 * resistance',
  source: ['definition', 'Joule heat'],
} as const satisfies About

export const wireHeatAt = formula<typeof about>('wire-heat-at', {}, ({ current, resistance }) => current ** 2 * resistance)
