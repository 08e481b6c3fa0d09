import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { blendShare, kinematicViscosity } from './quantities.ts'

/** Viscosity of a blend of two oils at one temperature. */
export const about = {
  name: 'Viscosity of a blend of two oils',
  in: { share: blendShare, viscosity1: role(kinematicViscosity, 'ν_1', 'Viscosity of the first oil'), viscosity2: role(kinematicViscosity, 'ν_2', 'Viscosity of the second oil') },
  out: kinematicViscosity,
  equation: '10^(10^(share * log10(log10(viscosity1 + 0.7)) + (1 - share) * log10(log10(viscosity2 + 0.7)))) - 0.7',
  units: { viscosity1: 'mm²/s', viscosity2: 'mm²/s', out: 'mm²/s' },
  source: ['astm-d7152', 'log log (ν + 0.7) of the parts added by share, both at one temperature (from memory)'],
  notes: 'Both viscosities at the same temperature. Thickened oils shear and blend less neatly than this.',
} as const satisfies About

export const waltherBlend = formula<typeof about>('walther-blend', { viscosity1: [2e-6, 2e-2], viscosity2: [2e-6, 2e-2] }, ({ share, viscosity1, viscosity2 }) => {
  const height = (nu: number): number => Math.log10(Math.log10(nu * 1e6 + 0.7))
  return (10 ** (10 ** (share * height(viscosity1) + (1 - share) * height(viscosity2))) - 0.7) * 1e-6
})
