import { formula, type About } from '../formula/formula.ts'
import { bearingLoad, mainLoadShare, rotorLoad } from './quantities.ts'

/** Load on a main bearing at the gas peak of the rotor beside it. */
export const about = {
  name: 'Load on a main bearing',
  in: { gas: rotorLoad, share: mainLoadShare },
  out: bearingLoad,
  equation: 'gas * share',
  source: ['derived', 'the inertia of two opposed rotors is balanced by counterweights: gas remains'],
  notes: 'Residual unbalance and bending of the shaft are left out.',
} as const satisfies About

export const mainLoad = formula<typeof about>('main-load', {}, ({ gas, share }) => gas * share)
