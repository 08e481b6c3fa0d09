import { formula, type About } from '../formula/formula.ts'
import { flowShare, fuelVolumeFlow, sessionTime, tankVolume } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** How long the usable fuel lasts. */
export const about = {
  name: 'Time on the usable fuel',
  in: { usable: role(tankVolume, 'V_u', 'Usable fuel'), fullFlow: role(fuelVolumeFlow, 'Q_f', 'Fuel flow at full throttle'), share: flowShare },
  out: sessionTime,
  equation: 'usable / (fullFlow * share)',
  source: ['definition', 'volume over mean flow'],
  sample: { fullFlow: [1e-6, 2e-4] },
} as const satisfies About

export const sessionTimeOf = formula<typeof about>('session-time-of', {}, ({ usable, fullFlow, share }) => usable / (fullFlow * share))
