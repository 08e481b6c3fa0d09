import { airMassFlow } from '../engine/airMassFlow.ts'
import { dryAirPressure } from '../engine/dryAirPressure.ts'
import { fuelFlowForAir } from '../engine/fuelFlowForAir.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { write } from '../quantity/write.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { backPressureRatio } from '../boost/backPressureRatio.ts'
import { exhaustFlow } from '../boost/exhaustFlow.ts'
import { gaugeBoost } from '../boost/gaugeBoost.ts'
import { heatShare } from '../cooling/heatShare.ts'
import { releasedHeat } from '../cooling/releasedHeat.ts'
import { unburnedHeat } from '../cooling/unburnedHeat.ts'
import { fuelPerCharge } from '../engine/fuelPerCharge.ts'
import { fuelPower } from '../engine/fuelPower.ts'
import { releasedShare } from '../engine/releasedShare.ts'
import { untraced } from '../formula/trace.ts'
import { chain } from './everything.ts'
import { runChain } from './chain.ts'
import { type Guess } from './core.ts'
import { solvePoint, type Outcome } from './regimes.ts'
import { coreMissing, givenFrom, type Given } from './given.ts'
import { fieldValues, type FieldValues } from './fieldValues.ts'
import { askedOf, corePointPaths, residualsOf, valuesOf } from './pointValues.ts'
import { type Failure, type Point, type Solved } from './point.ts'
import { type Sheet } from './sheet.ts'

/** Shaft speeds of a sweep: 36 from 1,500 rpm to the limit unless others are asked. */
export const sweepSpeeds = (limit: number, count = 36): number[] => {
  const low = Math.min((1500 * Math.PI) / 30, limit / 2)
  return Array.from({ length: count }, (_, i) => low + ((limit - low) * i) / (count - 1))
}

/** Air and boost alone, at every speed: what the rest of the chain stands on. Each speed starts from the one below it. */
export function solveCore(sheet: Sheet, speeds?: readonly number[]): readonly { speed: number; outcome: Outcome }[] {
  const fields = fieldValues(sheet)
  const b = givenFrom(fields)
  return untraced(() => sweepCore(b, speeds ?? sweepSpeeds(fields.get('engine.speedLimit') as number)))
}
function sweepCore(b: Given, speeds: readonly number[]): { speed: number; outcome: Outcome }[] {
  let near: Guess = { charge: b.airTemperature + 10, before: b.airPressure * 1.1, manifold: b.airPressure }
  return speeds.map((speed) => {
    const outcome = solvePoint(b, speed, near)
    if (outcome.converged) near = outcome.state
    return { speed, outcome }
  })
}

/**
 * The whole build: idle, the sweep, and what is true of the build as a whole.
 * Never throws for a sheet: what is missing or has no solution is said in the result.
 */
export function solveBuild(sheet: Sheet, speeds?: readonly number[]): Solved {
  return untraced(() => {
    const fields = fieldValues(sheet)
    const open = coreMissing(fields)
    if (open.length > 0) return unsolved(open, fields, speeds)
    const b = givenFrom(fields)
    const list = speeds ?? sweepSpeeds(fields.get('engine.speedLimit') as number)
    const idle = idlePoint(b, fields)
    const points = sweepCore(b, list).map(({ speed, outcome }) => fullPoint(b, fields, speed, outcome))
    return { idle, points, ...buildValues(b, points) }
  })
}

function unsolved(open: readonly string[], fields: FieldValues, speeds?: readonly number[]): Solved {
  const missing = Object.fromEntries(corePointPaths.map((path) => [path, open]))
  const blank = (speed: number, kind: Point['kind']): Point => finish({ speed, kind, values: {}, missing: { ...missing }, failed: {}, residuals: {} }, fields)
  return { idle: blank(0, 'idle'), points: (speeds ?? []).map((speed) => blank(speed, 'full')), build: {}, missing: { ...missing, 'boost.thresholdSpeed': open }, failed: {} }
}

/** Adds what the links of the chain make of a point. */
function finish(point: { -readonly [K in keyof Point]: Point[K] }, fields: FieldValues): Point {
  const values = { ...point.values }
  const missing = { ...point.missing }
  const failed = { ...point.failed }
  runChain(chain, fields, values, missing, failed)
  return { ...point, values, missing, failed }
}

/** Only what is a number: beside it stands why the rest is none. */
const finite = (of: Readonly<Record<string, number>>): Record<string, number> => Object.fromEntries(Object.entries(of).filter(([, value]) => Number.isFinite(value)))

function fullPoint(b: Given, fields: FieldValues, speed: number, outcome: Outcome): Point {
  const failure = failureOf(outcome, speed)
  const values = valuesOf(b, outcome)
  const blank = { speed, kind: 'full' as const, setBy: outcome.regime, missing: {}, residuals: finite(residualsOf(values, outcome)) }
  if (failure) {
    // What is asked of wastegate and actuator can be told where it is what they fail at that leads off the map.
    const known: Record<string, number> = { 'engine.speed': speed, ...(outcome.converged && outcome.asked !== outcome.state && outcome.asked.place.outside === 0 ? finite(askedOf(b, outcome.asked)) : {}) }
    return finish({ ...blank, values: known, failed: Object.fromEntries(corePointPaths.filter((p) => !(p in known)).map((path) => [path, failure])) }, fields)
  }
  const known = finite(values)
  const lost: Failure = { link: 'core', says: `At ${write(speed, shaftSpeed)} the equations of air and heat give no value here.` }
  return finish({ ...blank, values: known, failed: Object.fromEntries(corePointPaths.filter((path) => !(path in known)).map((path) => [path, lost])) }, fields)
}

/** Which link has no solution here, and why. */
function failureOf({ state, converged, residual, regime }: Outcome, speed: number): Failure | null {
  const at = `At ${write(speed, shaftSpeed)}${regime === 'wide open' ? ', with boost above its target because the wastegate passes too little,' : regime === 'stiff' ? ', with boost above its target because the actuator opens too late,' : ''}`
  if (Number.isNaN(residual)) return { link: 'core', says: `${at} the equations of air and boost have no value: a number of the sheet lies far from any engine.` }
  if (!converged) return { link: 'turbine-balance', says: `${at} no pressure before the turbine balances it with the compressor.` }
  const { place } = state
  if (place.outside === 1) return { link: 'surge', says: `${at} the engine takes less air than the compressor’s surge line at that pressure ratio: no steady running there.` }
  if (place.outside === 2) return { link: 'choke', says: `${at} the engine takes more air than this compressor passes at that pressure ratio.` }
  if (place.outside === 3) return { link: 'compressor-overspeed', says: `${at} the compressor would run above the top speed line of its map.` }
  return null
}

/**
 * Idle as the sheet describes it: no boost, no brake power. Exhaust heat and temperature are left out: the shares of full load, with the
 * work of friction ending in coolant and oil, say nothing honest about them here.
 */
function idlePoint(b: Given, fields: FieldValues): Point {
  const { speed, manifold, lambda, charge, ve } = b.idle
  const density = gasDensity({ pressure: dryAirPressure({ pressure: manifold, share: b.vapourShare }), temperature: charge })
  const air = airMassFlow({ volumetricEfficiency: ve, density, displacement: b.displacement, rotors: b.rotors, speed })
  const fuel = fuelFlowForAir({ airFlow: air, stoichiometricRatio: b.stoichiometricRatio, lambda })
  const chemical = fuelPower({ fuelFlow: fuel, heatingValue: b.heatingValue })
  const share = releasedShare({ lambda })
  const released = releasedHeat({ fuelPower: chemical, releasedShare: share })
  const coolant = heatShare({ power: released, share: b.coolantShare })
  const oil = heatShare({ power: released, share: b.oilShare })
  const surface = heatShare({ power: released, share: b.surfaceShare })
  const exhaust = exhaustFlow({ airFlow: air, fuelFlow: fuel })
  const values: Record<string, number> = {
    'engine.speed': speed, 'engine.manifoldPressure': manifold, 'engine.chargeTemperature': charge, 'engine.airFlow': air, 'engine.volumetricEfficiency': ve, 'engine.lambda': lambda,
    'engine.power': 0, 'engine.torque': 0, 'engine.backPressureRatio': backPressureRatio({ turbineInlet: b.airPressure, manifold }), 'engine.throttleInletPressure': b.airPressure,
    'boost.turbineInletPressure': b.airPressure, 'boost.turbineOutletPressure': b.airPressure, 'boost.exhaustFlow': exhaust, 'boost.boost': gaugeBoost({ manifold, outside: b.airPressure }),
    'fuel.massFlow': fuel, 'fuel.fuelPerCharge': fuelPerCharge({ fuelFlow: fuel, rotors: b.rotors, speed }),
    'cooling.fuelPower': chemical, 'cooling.coolantHeat': coolant, 'cooling.oilHeat': oil, 'cooling.surfaceHeat': surface,
    'cooling.unburnedHeat': unburnedHeat({ fuelPower: chemical, releasedShare: share }), 'cooling.chargeCoolerHeat': 0,
  }
  const failure: Failure = { link: 'idle', says: 'This value belongs to full throttle; at idle the model has none.' }
  const failed = Object.fromEntries(corePointPaths.filter((path) => !(path in values)).map((path) => [path, failure]))
  return finish({ speed, kind: 'idle', values: finite(values), missing: {}, failed, residuals: {} }, fields)
}

/** Two per cent of boost under target counts as reached: less than a gauge tells. */
const reached = 0.98

function buildValues(b: Given, points: readonly Point[]): Pick<Solved, 'build' | 'missing' | 'failed'> {
  // Target from this speed on for good: a speed that reaches it and loses it again is no threshold.
  const solved = points.filter((p) => p.values['boost.boost'] !== undefined)
  const first = solved.find((p) => p.values['boost.boost']! >= b.target(p.speed) * reached)
  if (!first) return { build: {}, missing: {}, failed: { 'boost.thresholdSpeed': { link: 'boost-by-wanted-speed', says: 'At no speed of the sweep does boost reach its target.' } } }
  const before = solved[solved.indexOf(first) - 1]
  return { build: { 'boost.thresholdSpeed': before ? between(before, first, b) : first.speed }, missing: {}, failed: {} }
}

/** Speed between two points at which boost reaches its target, on a straight line. */
function between(low: Point, high: Point, b: Given): number {
  const short = (p: Point): number => b.target(p.speed) * reached - p.values['boost.boost']!
  const s0 = short(low)
  const s1 = short(high)
  return low.speed + ((high.speed - low.speed) * s0) / (s0 - s1)
}
