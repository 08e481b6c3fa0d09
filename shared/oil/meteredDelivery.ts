import { manifoldPressure } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { meteredPerTurn } from './quantities.ts'

/** What the metering pump gives in one shaft turn: its lever follows the throttle, here seen in the manifold pressure. */
export const about = {
  name: 'Metering pump over load',
  in: {
    atRest: role(meteredPerTurn, 'V_0', 'Lever at rest'), full: role(meteredPerTurn, 'V_1', 'Lever full'), manifold: manifoldPressure,
    idle: role(manifoldPressure, 'p_i', 'Manifold pressure at rest'), open: role(manifoldPressure, 'p_0', 'Manifold pressure at full lever'),
  },
  out: meteredPerTurn,
  equation: 'atRest + (full - atRest) * min(1, max(0, (manifold - idle) / (open - idle)))',
  sample: { idle: [20e3, 60e3], open: [70e3, 110e3], manifold: [25e3, 150e3], atRest: [0.1e-9, 1e-9], full: [1e-9, 4e-9] },
  source: ['common-practice', 'lever from rest at idle to full at the pressure outside, straight between; no source'],
} as const satisfies About

export const meteredDelivery = formula<typeof about>('metered-delivery', {}, ({ atRest, full, manifold, idle, open }) =>
  atRest + (full - atRest) * Math.min(1, Math.max(0, (manifold - idle) / (open - idle))))
