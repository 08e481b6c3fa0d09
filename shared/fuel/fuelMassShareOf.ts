import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { ethanolShare, fuelDensity, fuelMassShare } from './quantities.ts'

/** Share by mass of one part of a blend, from its share by volume. */
export const about = {
  name: 'Share by mass from share by volume',
  in: { volumeShare: role(ethanolShare, 'x', 'Share by volume'), density: role(fuelDensity, 'ρ_1', 'Density of this part'), otherDensity: role(fuelDensity, 'ρ_2', 'Density of the rest') },
  out: fuelMassShare,
  equation: 'volumeShare * density / (volumeShare * density + (1 - volumeShare) * otherDensity)',
  source: ['derived', 'mass is volume times density; volumes are added as if mixing did not change them'],
} as const satisfies About

export const fuelMassShareOf = formula<typeof about>('fuel-mass-share-of', {}, ({ volumeShare, density, otherDensity }) => {
  const part = volumeShare * density
  return part / (part + (1 - volumeShare) * otherDensity)
})
