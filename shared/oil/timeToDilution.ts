import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dilution, driveRate, fuelRate, runningTime, sumpMass } from './quantities.ts'

/** Hours until the fuel in the oil comes to a limit. */
export const about = {
  name: 'Time to a dilution',
  in: { inflow: fuelRate, mass: sumpMass, driven: role(driveRate, 'k', 'Rate at which hot oil gives fuel off'), limit: role(dilution, 'x_l', 'Dilution that is the limit') },
  out: runningTime,
  steps: ['The balance of fuel in the sump is solved for time.', 'Where hot oil gives off so much that the limit is never met there is no such time.'],
  source: ['derived', 'the balance of the fuel in the sump, solved for time'],
} as const satisfies About

export const timeToDilution = formula<typeof about>('time-to-dilution', {}, ({ inflow, mass, driven, limit }) => {
  const left = 1 - (limit * mass * driven) / inflow
  return left > 0 ? -Math.log(left) / driven : NaN
})
