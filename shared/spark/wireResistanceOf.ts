import { formula, type About } from '../formula/formula.ts'
import { copperCoefficient, copperReference, copperResistivity } from './copper.ts'
import { wireArea, wireLength, wireResistance, wireTemperature } from './quantities.ts'

/** Resistance of a copper wire. `ρ20 (1 + α (T − 293.15)) l / A`, ohms; the length counts there and back where the return is a wire. */
export const about = {
  name: 'Resistance of a copper wire',
  in: { length: wireLength, area: wireArea, temperature: wireTemperature },
  out: wireResistance,
  constants: { rho: copperResistivity, alpha: copperCoefficient, T20: copperReference },
  equation: 'rho * (1 + alpha * (temperature - T20)) * length / area',
  source: ['iec-60028', 'annealed copper at 20 °C and its coefficient'],
  notes: 'The coefficient is that at 20 °C, used near it. Stranding, plating and joints add some percent.',
} as const satisfies About

export const wireResistanceOf = formula<typeof about>('wire-resistance-of', {}, ({ length, area, temperature }) =>
  (copperResistivity.value * (1 + copperCoefficient.value * (temperature - copperReference.value)) * length) / area)
