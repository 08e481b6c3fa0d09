import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dilution, driveRate, fuelRate, runningTime, sumpMass } from './quantities.ts'

/** Fuel in the oil after some hours, where running brings some in and hot oil gives some off. */
export const about = {
  name: 'Fuel in the oil over time',
  in: { inflow: fuelRate, mass: sumpMass, driven: role(driveRate, 'k', 'Rate at which hot oil gives fuel off'), time: runningTime },
  out: dilution,
  equation: 'inflow / (mass * driven) * (1 - exp(-driven * time))',
  sample: { driven: [1e-6, 1e-4] },
  source: ['derived', 'balance of the fuel in the sump: what comes in less a fixed share of what is there; the oil’s own mass taken as steady'],
  notes: 'For dilutions of some per cent. The heavy part of the fuel is given off far more slowly than the light part: one rate stands for both.',
} as const satisfies About

export const dilutionAfter = formula<typeof about>('dilution-after', {}, ({ inflow, mass, driven, time }) => (inflow / (mass * driven)) * (1 - Math.exp(-driven * time)))
