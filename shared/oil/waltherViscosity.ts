import { formula, type About } from '../formula/formula.ts'
import { kinematicViscosity, oilTemperature, waltherIntercept, waltherSlope } from './quantities.ts'

/** Viscosity at a temperature from the oil's straight line. */
export const about = {
  name: 'Viscosity at a temperature',
  in: { intercept: waltherIntercept, slope: waltherSlope, temperature: oilTemperature },
  out: kinematicViscosity,
  equation: '10^(10^(intercept - slope * log10(temperature))) - 0.7',
  units: { temperature: 'K', out: 'mm²/s' },
  sample: { intercept: [9, 9.3], slope: [3.4, 3.5], temperature: [300, 420] },
  source: ['astm-d341', 'log log (ν + 0.7) = A − B log T, the form for viscosities above 2 mm²/s'],
  notes: 'Low-shear viscosity: a fast bearing film of a thickened oil has less.',
} as const satisfies About

export const waltherViscosity = formula<typeof about>('walther-viscosity', {},
  ({ intercept, slope, temperature }) => (10 ** (10 ** (intercept - slope * Math.log10(temperature))) - 0.7) * 1e-6)
