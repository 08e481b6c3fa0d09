import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fanFlow, fanPressureOf } from './quantities.ts'


/** Pressure that a fan adds, by a parabola between its pressure against a closed core and its free flow. A fan overrun by ram air is taken to freewheel without resistance. */
export const about = {
  name: 'Pressure of the fan',
  in: { flow: fanFlow, shutOff: role(fanPressureOf, 'Δp_f0', 'Pressure against a closed core'), freeFlow: role(fanFlow, 'V_f0', 'Free flow') },
  out: fanPressureOf,
  equation: 'shutOff * max(0, 1 - (flow / freeFlow)^2)',
  source: ['common-practice', 'parabola through two points of the fan’s curve'],
  sample: { shutOff: [10, 1500], flow: [0, 2], freeFlow: [2.1, 6] },
} as const satisfies About

export const fanPressure = formula<typeof about>('fan-pressure', {}, ({ flow, shutOff, freeFlow }) => (freeFlow > 0 ? shutOff * Math.max(0, 1 - (flow / freeFlow) ** 2) : 0))
