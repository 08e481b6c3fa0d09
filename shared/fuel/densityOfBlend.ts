import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { ethanolShare, fuelDensity } from './quantities.ts'

/** Density of a blend of two fuels at one temperature. */
export const about = {
  name: 'Density of a blend',
  in: { volumeShare: role(ethanolShare, 'x', 'Share by volume'), density: role(fuelDensity, 'ρ_1', 'Density of this part'), otherDensity: role(fuelDensity, 'ρ_2', 'Density of the rest') },
  out: fuelDensity,
  equation: 'volumeShare * density + (1 - volumeShare) * otherDensity',
  source: ['derived', 'masses add; volumes are added as if mixing did not change them'],
  notes: 'Petrol and ethanol swell by a few thousandths on mixing, which is left out.',
} as const satisfies About

export const densityOfBlend = formula<typeof about>('density-of-blend', {}, ({ volumeShare, density, otherDensity }) => volumeShare * density + (1 - volumeShare) * otherDensity)
