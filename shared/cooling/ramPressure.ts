import { formula, type About } from '../formula/formula.ts'
import { airDensity } from '../media/quantities.ts'
import { carSpeedOf, ramPressureOf, ramRecoveryOf } from './quantities.ts'


/** What is left of the oncoming air’s dynamic pressure to push it through the core. */
export const about = {
  name: 'Ram pressure',
  in: { density: airDensity, speed: carSpeedOf, recovery: ramRecoveryOf },
  out: ramPressureOf,
  equation: 'recovery * density * speed^2 / 2',
  source: ['definition', 'dynamic pressure times a recovery'],
  notes: 'Recovery gathers grille, ducts and the way out; it hardly depends on speed until the car is near standstill.',
} as const satisfies About

export const ramPressure = formula<typeof about>('ram-pressure', {}, ({ density, speed, recovery }) => (recovery * density * speed * speed) / 2)
