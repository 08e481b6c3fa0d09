import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { kinematicViscosity, oilTemperature, waltherIntercept, waltherSlope } from './quantities.ts'

const z = (name: string): string => `${name} + 0.7 + exp(-1.47 - 1.84 * ${name} - 0.51 * ${name}^2)`
const w = (name: string): string => `log10(log10(${z(name)}))`

/** The same line with the standard's term for thin liquids, down to 0.21 mm²/s. */
export const about = {
  name: 'Viscosity line from two points, thin liquids included',
  in: {
    viscosity1: role(kinematicViscosity, 'ν_1', 'Viscosity at the first temperature'), temperature1: role(oilTemperature, 'T_1', 'First temperature'),
    viscosity2: role(kinematicViscosity, 'ν_2', 'Viscosity at the second temperature'), temperature2: role(oilTemperature, 'T_2', 'Second temperature'),
  },
  out: { intercept: waltherIntercept, slope: waltherSlope },
  equation: {
    intercept: `${w('viscosity1')} + log10(temperature1) * (${w('viscosity1')} - ${w('viscosity2')}) / (log10(temperature2) - log10(temperature1))`,
    slope: `(${w('viscosity1')} - ${w('viscosity2')}) / (log10(temperature2) - log10(temperature1))`,
  },
  units: { viscosity1: 'mm²/s', viscosity2: 'mm²/s', temperature1: 'K', temperature2: 'K' },
  sample: { temperature1: [300, 320], temperature2: [360, 430], viscosity1: [2e-6, 300e-6], viscosity2: [0.3e-6, 1.5e-6] },
  source: ['astm-d341', 'Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²); log log Z = A − B log T (from memory)'],
} as const satisfies About

export const d341Line = formula<typeof about>('d341-line', { viscosity1: [0.21e-6, 2e-2], viscosity2: [0.21e-6, 2e-2] },
  ({ viscosity1, temperature1, viscosity2, temperature2 }) => {
    const first = height(viscosity1 * 1e6)
    const slope = (first - height(viscosity2 * 1e6)) / (Math.log10(temperature2) - Math.log10(temperature1))
    return { intercept: first + slope * Math.log10(temperature1), slope }
  })

const height = (nu: number): number => Math.log10(Math.log10(nu + 0.7 + Math.exp(-1.47 - 1.84 * nu - 0.51 * nu * nu)))
