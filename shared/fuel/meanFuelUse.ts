import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { flowShare, fuelVolumeFlow } from './quantities.ts'

/** Fuel used on average by an engine that is not always at full load. */
export const about = {
  name: 'Mean fuel use',
  in: { used: role(fuelVolumeFlow, 'Q_f', 'Greatest fuel use'), share: flowShare },
  out: role(fuelVolumeFlow, 'Q_m', 'Mean fuel use'),
  equation: 'used * share',
  source: ['definition', 'a share of a whole'],
} as const satisfies About

export const meanFuelUse = formula<typeof about>('mean-fuel-use', {}, ({ used, share }) => used * share)
