import { formula, type About } from '../formula/formula.ts'
import { coreAir, coverageOf } from '../cooling/quantities.ts'
import { coolingAir } from './quantities.ts'

/** Cooling air that meets the charge cooler in front of a radiator. */
export const about = {
  name: 'Air over the charge cooler',
  in: { air: coreAir, coverage: coverageOf },
  out: coolingAir,
  equation: 'air * coverage',
  source: ['derived', 'air spread evenly over the face'],
} as const satisfies About

export const airOverCooler = formula<typeof about>('air-over-cooler', {}, ({ air, coverage }) => air * coverage)
