import { boostWithOnePort } from '../boost/boostWithOnePort.ts'
import { exhaustForceOnRod } from '../boost/exhaustForceOnRod.ts'
import { gasConstantFrom } from '../boost/gasConstantFrom.ts'
import { pressureUnderExhaust } from '../boost/pressureUnderExhaust.ts'
import { travelPressure } from '../boost/travelPressure.ts'
import { wastegateCapacity } from '../boost/wastegateCapacity.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { newton } from '../numerics/newton.ts'
import { evaluate, type Guess, type State } from './core.ts'
import { type Given } from './given.ts'

/** What sets boost at a speed: its target, a wastegate that is shut, one that opens too early, too late, or not far enough. */
export type Regime = 'target' | 'shut' | 'cracked' | 'stiff' | 'wide open'
export type Outcome = {
  readonly state: State
  /** The same speed as if wastegate and actuator did all that is asked of them: boost at target, or the valve shut. */
  readonly asked: State
  readonly regime: Regime
  readonly residual: number
  readonly converged: boolean
  readonly steps: number
}

const tolerance = 1e-9
const scale = { charge: 10, before: 1e4, manifold: 1e4 }

/**
 * Solves one speed. First with the wastegate regulating: boost is at target and what the turbine does not need goes past it. Where that
 * would ask the turbine for more than all the exhaust, the wastegate is shut and boost floats to where compressor and turbine balance.
 * Then what valve and actuator can do sets boost where they cannot do what is asked.
 */
export function solvePoint(b: Given, speed: number, near: Guess): Outcome {
  try { return balanced(b, speed, near) } catch (error) {
    // Numbers far from any engine leave the equations without a value to start from: no solution, and no reason to stop the sweep.
    if (!(error instanceof RangeError)) throw error
    const state = evaluate(b, speed, near)
    return { state, asked: state, regime: 'shut', residual: NaN, converged: false, steps: 0 }
  }
}

type Third = (s: State) => number

function balanced(b: Given, speed: number, near: Guess): Outcome {
  const target = b.airPressure + b.target(speed)
  const asked = b.throttle ? three(b, speed, near, target, (s) => (s.pipe - target) / scale.manifold) : two(b, speed, near, target)
  if (!(asked.converged && asked.state.bypass >= 0)) {
    const shut = three(b, speed, near, target, (s) => s.missFlow)
    const cracks = b.actuator !== null && shut.converged && shut.state.pipe - b.airPressure > heldBy(b, b.actuator, shut.state)
    return cracks ? limited(b, speed, shut, 'cracked') : { ...shut, asked: shut.state, regime: 'shut' }
  }
  const boost = asked.state.pipe - b.airPressure
  if (b.actuator && boost > heldBy(b, b.actuator, asked.state)) return limited(b, speed, asked, 'cracked')
  const passes = asked.state.bypass <= capacityOf(b, asked.state)
  const opens = b.actuator === null || boost >= opensAt(b, b.actuator, asked.state)
  if (passes && opens) return { ...asked, asked: asked.state, regime: 'target' }
  const wide = passes ? null : limited(b, speed, asked, 'wide open')
  // A valve that would have to stand wide open may not even get there: the actuator’s spring then leaves more boost still.
  const stands = wide === null ? false : b.actuator === null || !wide.converged || wide.state.pipe - b.airPressure >= opensAt(b, b.actuator, wide.state)
  return stands ? wide! : limited(b, speed, asked, 'stiff')
}

type Found = Pick<Outcome, 'state' | 'residual' | 'converged' | 'steps'>

/** Manifold pressure given: charge temperature and pressure before the turbine are the unknowns. */
function two(b: Given, speed: number, near: Guess, manifold: number): Found {
  const found = newton((x, out) => {
    const s = evaluate(b, speed, { charge: x[0]!, before: x[1]!, manifold })
    out[0] = s.missCharge
    out[1] = s.missPower
  }, [near.charge, Math.max(near.before, b.airPressure * 1.02)], { scale: [scale.charge, scale.before], lower: [200, b.airPressure * 1.0001], upper: [700, 2e6], tolerance })
  return { ...found, state: evaluate(b, speed, { charge: found.x[0]!, before: found.x[1]!, manifold }) }
}

/** Manifold pressure is the third unknown, and what sets it the third equation. */
function three(b: Given, speed: number, near: Guess, highest: number, third: Third): Found {
  const found = newton((x, out) => {
    const s = evaluate(b, speed, { charge: x[0]!, before: x[1]!, manifold: x[2]! })
    out[0] = s.missCharge
    out[1] = s.missPower
    out[2] = third(s)
  }, [near.charge, Math.max(near.before, b.airPressure * 1.02), Math.min(near.manifold, highest)], {
    scale: [scale.charge, scale.before, scale.manifold], lower: [200, b.airPressure * 1.0001, b.airPressure * (b.throttle ? 0.05 : 0.3)], upper: [700, 2e6, highest * 1.2], tolerance,
  })
  return { ...found, state: evaluate(b, speed, { charge: found.x[0]!, before: found.x[1]!, manifold: found.x[2]! }) }
}

/** Boost as valve and actuator leave it. */
function limited(b: Given, speed: number, asked: Found, regime: 'cracked' | 'stiff' | 'wide open'): Outcome {
  const boost = (s: State): number => s.pipe - b.airPressure
  const third: Third = regime === 'wide open' ? (s) => (s.bypass - capacityOf(b, s)) / (0.1 * s.exhaust)
    : regime === 'stiff' ? (s) => (boost(s) - opensAt(b, b.actuator!, s)) / scale.manifold
      : (s) => (boost(s) - heldBy(b, b.actuator!, s)) / scale.manifold
  const highest = regime === 'cracked' ? asked.state.manifold : 6 * b.airPressure
  const found = three(b, speed, asked.state, highest, third)
  // A spring that wants more boost than all the exhaust can make never opens: boost floats, above its target.
  const never = regime === 'stiff' && found.converged && found.state.bypass < 0
  return { ...(never ? three(b, speed, asked.state, highest, (s) => s.missFlow) : found), asked: asked.state, regime }
}

/** Flow through the wastegate wide open. */
function capacityOf({ wastegate }: Given, { before, after, beforeTemperature, specificHeat }: State): number {
  const heatRatio = exhaustHeatRatio({ specificHeat })
  return wastegateCapacity({ area: wastegate.area, dischargeCoefficient: wastegate.discharge, inletPressure: before, inletTemperature: beforeTemperature, outletPressure: after, heatRatio, gasConstant: gasConstantFrom({ specificHeat, heatRatio }) })
}

type Actuator = NonNullable<Given['actuator']>

/** Boost at which the whole of it, on the opening side, holds the valve as far open as this state asks. */
function opensAt(b: Given, a: Actuator, s: State): number {
  const capacity = capacityOf(b, s)
  const flow = Math.min(Math.max(s.bypass, 0), capacity)
  const bench = capacity > 0 ? travelPressure({ firstMovement: a.firstMovement, fullTravel: a.fullTravel, flow, capacity }) : a.firstMovement
  return pressureUnderExhaust({ bench, exhaustForce: exhaustForceOnRod({ inlet: s.before, outlet: s.after, diameter: a.diameter, leverRatio: a.leverRatio }), diaphragmArea: a.diaphragmArea })
}
/** The same with the control valve at its highest setting: more boost than that, and the valve opens further. */
const heldBy = (b: Given, a: Actuator, s: State): number => boostWithOnePort({ pressure: opensAt(b, a, s), kept: a.kept })
