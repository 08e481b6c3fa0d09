import { formula, type About } from '../formula/formula.ts'
import { flowShare, fuelVolumeFlow, sessionTime, tankVolume } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Fuel that a session takes. */
export const about = {
  name: 'Fuel of a session',
  in: { fullFlow: role(fuelVolumeFlow, 'Q_f', 'Fuel flow at full throttle'), share: flowShare, time: sessionTime },
  out: role(tankVolume, 'V_s', 'Fuel a session takes'),
  equation: 'fullFlow * share * time',
  source: ['definition', 'mean flow times time'],
} as const satisfies About

export const sessionFuelOf = formula<typeof about>('session-fuel-of', {}, ({ fullFlow, share, time }) => fullFlow * share * time)
