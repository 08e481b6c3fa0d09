import { formula, type About } from '../formula/formula.ts'
import { kinematicViscosity, oilTemperature, waltherIntercept, waltherSlope } from './quantities.ts'

const above = '(10^(10^(intercept - slope * log10(temperature))) - 0.7)'

/** Viscosity at a temperature from the line that includes thin liquids: the standard's own inverse of Z. */
export const about = {
  name: 'Viscosity at a temperature, thin liquids included',
  in: { intercept: waltherIntercept, slope: waltherSlope, temperature: oilTemperature },
  out: kinematicViscosity,
  equation: `${above} - exp(-0.7487 - 3.295 * ${above} + 0.6119 * ${above}^2 - 0.3193 * ${above}^3)`,
  units: { temperature: 'K', out: 'mm²/s' },
  sample: { intercept: [9, 9.3], slope: [3.4, 3.5], temperature: [300, 420] },
  source: ['astm-d341', 'ν = (Z − 0.7) − exp(−0.7487 − 3.295 (Z − 0.7) + 0.6119 (Z − 0.7)² − 0.3193 (Z − 0.7)³) (from memory)'],
  notes: 'The standard’s inverse is a fit: back from a known viscosity it returns within about 1 % below 2 mm²/s and exactly above.',
} as const satisfies About

export const d341Viscosity = formula<typeof about>('d341-viscosity', {}, ({ intercept, slope, temperature }) => {
  const x = 10 ** (10 ** (intercept - slope * Math.log10(temperature))) - 0.7
  return (x - Math.exp(-0.7487 - 3.295 * x + 0.6119 * x ** 2 - 0.3193 * x ** 3)) * 1e-6
})
