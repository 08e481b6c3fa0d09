import { formula, inputsBut, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { untraced } from '../formula/trace.ts'
import { angularAcceleration } from '../driveline/quantities.ts'
import { manifoldPressure, shaftSpeed, veCurve } from '../engine/quantities.ts'
import { veAtSpeed } from '../engine/veAtSpeed.ts'
import { integrate } from '../numerics/rungeKutta.ts'
import { role } from '../quantity/quantity.ts'
import { about as state, boostAtTurboSpeed } from './boostAtTurboSpeed.ts'
import { responseTime, turboInertia, turboSpeed } from './quantities.ts'

/** Time from the throttle’s opening until the manifold reaches a pressure. */
export const about = {
  name: 'Time to boost',
  in: inputsBut(state, ['ve', 'speed', 'turboSpeed'], {
    curve: veCurve, wanted: role(manifoldPressure, 'p_w', 'Manifold pressure waited for'), shaft: role(shaftSpeed, 'n_0', 'Shaft speed at the step'), climb: angularAcceleration,
    start: role(turboSpeed, 'n_t0', 'Turbocharger speed at the step'), inertia: turboInertia,
  }),
  out: { time: responseTime, turbo: role(turboSpeed, 'n_t', 'Turbocharger speed by then'), shaftThen: role(shaftSpeed, 'n', 'Shaft speed by then') },
  steps: [
    'The throttle opens at once and the wastegate stays shut; shaft speed climbs evenly.',
    'dω/dt = (power the turbine brings - compressor power) / (number of turbochargers × inertia × ω), with the boost that goes with ω at each moment.',
    'Integrate by Dormand and Prince to a ten-thousandth until the manifold reaches the pressure waited for, twenty seconds at most.',
  ],
  source: ['derived', 'Newton’s second law for the turbocharger’s shaft, with the flows of each moment as if they stood still'],
  notes: 'Exhaust temperature held: a cold manifold and a lean first moment make it later. Mean flow only: pulses make it sooner.',
} as const satisfies About

const longest = 20

export const boostResponse = formula<typeof about>('boost-response', {}, ({ curve, wanted, shaft, climb, start, inertia, ...x }) => untraced(() => {
  const shaftAt = (t: number): number => shaft + climb * t
  const at = (t: number, wheel: number) => { const speed = shaftAt(t); return boostAtTurboSpeed({ ...x, speed, ve: veAtSpeed({ curve, speed }), turboSpeed: wheel }) }
  const missing = (t: number, y: Float64Array): number => at(t, y[0]!).manifold - wanted
  if (missing(0, Float64Array.of(start)) >= 0) throw new NoAnswer('boost-response', 'Boost is there before the throttle opens: start from a slower turbocharger.')
  const course = integrate((t, y, dy) => {
    const { asked, given } = at(t, y[0]!)
    dy[0] = (given - asked) / (x.turbos * inertia * y[0]!)
  }, { from: 0, to: longest, start: [start], relative: 1e-4, absolute: start * 1e-4, longest: 0.5, until: missing, maxSteps: 400 })
  if (course.ended !== 'at the event') throw new NoAnswer('boost-response', `In ${longest} seconds this boost does not come: at this shaft speed the exhaust cannot drive the compressor that far. See the boost threshold.`)
  return { time: course.last.t, turbo: course.last.y[0]!, shaftThen: shaftAt(course.last.t) }
}))
