import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { kinematicViscosity, oilTemperature, waltherIntercept, waltherSlope } from './quantities.ts'

/** The straight line of an oil on the viscosity-temperature chart, from two known viscosities. */
export const about = {
  name: 'Viscosity line from two points',
  in: {
    viscosity1: role(kinematicViscosity, 'ν_1', 'Viscosity at the first temperature'), temperature1: role(oilTemperature, 'T_1', 'First temperature'),
    viscosity2: role(kinematicViscosity, 'ν_2', 'Viscosity at the second temperature'), temperature2: role(oilTemperature, 'T_2', 'Second temperature'),
  },
  out: { intercept: waltherIntercept, slope: waltherSlope },
  equation: {
    intercept: 'log10(log10(viscosity1 + 0.7)) + log10(temperature1) * (log10(log10(viscosity1 + 0.7)) - log10(log10(viscosity2 + 0.7))) / (log10(temperature2) - log10(temperature1))',
    slope: '(log10(log10(viscosity1 + 0.7)) - log10(log10(viscosity2 + 0.7))) / (log10(temperature2) - log10(temperature1))',
  },
  units: { viscosity1: 'mm²/s', viscosity2: 'mm²/s', temperature1: 'K', temperature2: 'K' },
  sample: { temperature1: [300, 320], temperature2: [360, 430], viscosity1: [20e-6, 300e-6], viscosity2: [3e-6, 15e-6] },
  source: ['astm-d341', 'log log (ν + 0.7) = A − B log T, the form for viscosities above 2 mm²/s'],
  notes: 'Straight between the two points; beyond them it is an extrapolation, good for mineral oils, less for heavily thickened ones.',
} as const satisfies About

export const waltherLine = formula<typeof about>('walther-line', { viscosity1: [2e-6, 2e-2], viscosity2: [2e-6, 2e-2] },
  ({ viscosity1, temperature1, viscosity2, temperature2 }) => {
    const first = Math.log10(Math.log10(viscosity1 * 1e6 + 0.7))
    const second = Math.log10(Math.log10(viscosity2 * 1e6 + 0.7))
    const slope = (first - second) / (Math.log10(temperature2) - Math.log10(temperature1))
    return { intercept: first + slope * Math.log10(temperature1), slope }
  })
