import { formula, type About } from '../formula/formula.ts'
import { burnTime, chargeWindow, sparkPeriod } from './quantities.ts'

/** Time that a coil has to charge: from spark to spark, less the time the spark burns. `t_p − t_b`, seconds. */
export const about = {
  name: 'Time there is to charge a coil',
  in: { period: sparkPeriod, burn: burnTime },
  out: chargeWindow,
  equation: 'period - burn',
  source: ['derived', 'a coil cannot charge while it discharges into the spark'],
  notes: 'Charging earlier cuts the spark short.',
} as const satisfies About

export const chargeWindowOf = formula<typeof about>('charge-window-of', {}, ({ period, burn }) => period - burn)
