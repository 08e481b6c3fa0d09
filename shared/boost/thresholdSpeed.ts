import { formula, inputsBut, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { shaftSpeed, veCurve } from '../engine/quantities.ts'
import { veAtSpeed } from '../engine/veAtSpeed.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot, type Found } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { about as balance, turboBalanceAt } from './turboBalanceAt.ts'

/** Lowest shaft speed at which the turbine drives the compressor to a boost, all exhaust through it. */
export const about = {
  name: 'Boost threshold',
  in: inputsBut(balance, ['speed', 've'], { curve: veCurve }),
  out: role(shaftSpeed, 'n_th', 'Shaft speed at which boost reaches its target'),
  steps: ['From 500 rpm upwards look for the first speed at which the turbine gives what the compressor takes at that boost, and close in on it.'],
  source: ['derived', 'balance of powers on the turbocharger’s shaft'],
  notes: 'Mean flow only: pulses bring boost a little earlier.',
} as const satisfies About

const rpm = Math.PI / 30
const steps = 60

export const thresholdSpeed = formula<typeof about>('threshold-speed', {}, ({ curve, ...x }) => {
  const spare = (speed: number): number => {
    const { asked, given, ratio } = turboBalanceAt({ ...x, speed, ve: veAtSpeed({ curve, speed }) })
    return ratio > 1 ? given - asked : NaN
  }
  const found = untraced(() => firstRise(spare))
  if (!found) throw new NoAnswer('boost-by-wanted-speed', 'At no speed from 500 to 11,000 rpm does the turbine begin to drive the compressor to this boost: it does so below that, or never. Look at boost, turbine capacity and gas temperature.')
  return root('shaft speed', found.x, found.residual)
})

function firstRise(spare: (speed: number) => number): Found | null {
  let low = 500 * rpm
  let atLow = spare(low)
  for (let i = 1; i <= steps; i++) {
    const high = (500 + (10500 * i) / steps) * rpm
    const atHigh = spare(high)
    if (atLow < 0 && atHigh >= 0) return bracketedRoot(spare, low, high, 1e-7, atLow, atHigh)
    low = high
    atLow = atHigh
  }
  return null
}
