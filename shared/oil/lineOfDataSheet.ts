import { type About, formula } from '../formula/formula.ts'
import { viscosityAt100, viscosityAt40, waltherIntercept, waltherSlope } from './quantities.ts'
import { waltherLine } from './waltherLine.ts'

/** The straight line of an oil from the two viscosities of its data sheet. */
export const about = {
  name: 'Viscosity line of a data sheet',
  in: { viscosity40: viscosityAt40, viscosity100: viscosityAt100 },
  out: { intercept: waltherIntercept, slope: waltherSlope },
  steps: ['The line of ASTM D341 is laid through the viscosities at 40 and 100 °C.'],
  source: ['astm-d341', 'log log (ν + 0.7) = A − B log T, the form for viscosities above 2 mm²/s'],
} as const satisfies About

const at40 = 313.15, at100 = 373.15
export const lineOfDataSheet = formula<typeof about>('line-of-data-sheet', {}, ({ viscosity40, viscosity100 }) => waltherLine({ viscosity1: viscosity40, temperature1: at40, viscosity2: viscosity100, temperature2: at100 }))
