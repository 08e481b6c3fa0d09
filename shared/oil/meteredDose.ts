import { formula, type About } from '../formula/formula.ts'
import { meteredPerTurn, oilDensity, sealDose } from './quantities.ts'

/** Mass of oil that the metering pump gives in one shaft turn. */
export const about = {
  name: 'Dose by the metering pump',
  in: { delivery: meteredPerTurn, density: oilDensity },
  out: sealDose,
  equation: 'delivery * density',
  source: ['definition', 'mass of a volume'],
} as const satisfies About

export const meteredDose = formula<typeof about>('metered-dose', {}, ({ delivery, density }) => delivery * density)
