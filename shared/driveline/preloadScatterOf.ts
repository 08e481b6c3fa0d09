import { formula, type About } from '../formula/formula.ts'
import { preloadScatter, tighteningMethod } from './quantities.ts'

const shares = { 'torque-dry': 0.35, 'torque-oiled': 0.25, hydraulic: 0.15, washer: 0.1, ultrasonic: 0.1, stretch: 0.05 } as const

/** By how much a bolt's preload may miss, up or down, as a share: it depends on how it was tightened. */
export const about = {
  name: 'Scatter of preload',
  in: { method: tighteningMethod },
  out: preloadScatter,
  table: 'Typical preload uncertainty by way of tightening, either side of the mean.',
  nodes: [{ in: { method: 'torque-dry' }, out: 0.35 }, { in: { method: 'torque-oiled' }, out: 0.25 }, { in: { method: 'hydraulic' }, out: 0.15 }, { in: { method: 'washer' }, out: 0.1 }, { in: { method: 'ultrasonic' }, out: 0.1 }, { in: { method: 'stretch' }, out: 0.05 }],
  source: ['nsts-08307', 'section 3.4, typical preload uncertainties'],
} as const satisfies About

export const preloadScatterOf = formula<typeof about>('preload-scatter-of', {}, ({ method }) => shares[method])
