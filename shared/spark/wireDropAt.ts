import { formula, type About } from '../formula/formula.ts'
import { wireCurrent, wireDrop, wireResistance } from './quantities.ts'

/** Voltage that a wire keeps. `I R`, volts. */
export const about = {
  name: 'Voltage drop of a wire',
  in: { current: wireCurrent, resistance: wireResistance },
  out: wireDrop,
  equation: 'current * resistance',
  source: ['definition', 'Ohm’s law'],
} as const satisfies About

export const wireDropAt = formula<typeof about>('wire-drop-at', {}, ({ current, resistance }) => current * resistance)
