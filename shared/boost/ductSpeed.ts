import { formula, type About } from '../formula/formula.ts'
import { ductBore, gasDensity, gasFlow, gasSpeed } from './quantities.ts'

/** Mean speed of a gas in a round duct. */
export const about = {
  name: 'Speed of a gas in a duct',
  in: { flow: gasFlow, density: gasDensity, bore: ductBore },
  out: gasSpeed,
  equation: '4 * flow / (pi * density * bore^2)',
  source: ['definition', 'volume flow over area'],
} as const satisfies About

export const ductSpeed = formula<typeof about>('duct-speed', {}, ({ flow, density, bore }) => (4 * flow) / (Math.PI * density * bore * bore))
