import { type About, formula } from '../formula/formula.ts'
import { kinematicViscosity, oilTemperature, waltherIntercept, waltherSlope } from './quantities.ts'

/** Temperature at which an oil's line has a kinematic viscosity. */
export const about = {
  name: 'Temperature of a viscosity',
  in: { intercept: waltherIntercept, slope: waltherSlope, viscosity: kinematicViscosity },
  out: oilTemperature,
  equation: '10^((intercept - log10(log10(viscosity + 0.7))) / slope)',
  units: { viscosity: 'mm²/s', out: 'K' },
  sample: { intercept: [9, 9.3], slope: [3.4, 3.5], viscosity: [5e-6, 3e-3] },
  source: ['astm-d341', 'the line solved for temperature'],
} as const satisfies About

export const lineTemperature = formula<typeof about>('line-temperature', {}, ({ intercept, slope, viscosity }) => 10 ** ((intercept - Math.log10(Math.log10(viscosity * 1e6 + 0.7))) / slope))
