import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange, nozzleDrop, pressurePulse } from './quantities.ts'

/** How far a change of rail pressure moves the flow of an injector, as a share. */
export const about = {
  name: 'Change of flow by a pulse',
  in: { pulse: pressurePulse, drop: nozzleDrop },
  out: role(fuelChange, 'δ_p', 'Change of flow by a pulse'),
  equation: 'sqrt(1 + pulse / drop) - 1',
  source: ['sae-j1832', 'flow goes with the root of the pressure across the nozzle'],
} as const satisfies About

export const pulseOverDrop = formula<typeof about>('pulse-over-drop', {}, ({ pulse, drop }) => Math.sqrt(1 + pulse / drop) - 1)
