import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dilution, driveRate, fuelRate, sumpMass } from './quantities.ts'

/** Dilution at which hot oil gives off what comes in. */
export const about = {
  name: 'Dilution that it settles at',
  in: { inflow: fuelRate, mass: sumpMass, driven: role(driveRate, 'k', 'Rate at which hot oil gives fuel off') },
  out: role(dilution, 'x_e', 'Dilution it would settle at'),
  equation: 'inflow / (mass * driven)',
  sample: { driven: [1e-6, 1e-4] },
  source: ['derived', 'steady state of the balance of fuel in the sump'],
} as const satisfies About

export const dilutionSettled = formula<typeof about>('dilution-settled', {}, ({ inflow, mass, driven }) => inflow / (mass * driven))
