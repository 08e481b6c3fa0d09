import { gasDensity } from '../engine/gasDensity.ts'
import { accelerationOf } from '../driveline/accelerationOf.ts'
import { cornerSpeed } from '../driveline/cornerSpeed.ts'
import { dragForceAt } from '../driveline/dragForceAt.ts'
import { driveForce } from '../driveline/driveForce.ts'
import { equivalentMassIn } from '../driveline/equivalentMassIn.ts'
import { gripForce } from '../driveline/gripForce.ts'
import { inertiaSum } from '../driveline/inertiaSum.ts'
import { roadResistance } from '../driveline/roadResistance.ts'
import { tyreLimit } from '../driveline/tyreLimit.ts'
import { standardGravity } from '../formula/constants.ts'
import { type FieldValues } from '../build/fieldValues.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { type Point } from '../build/point.ts'
import { type Circuit } from './circuits.ts'
import { lapOf, type Lap, type Piece } from './piece.ts'
import { overSpeed } from './overSpeed.ts'

/** A car as a point that pulls with one axle, brakes with four tyres and corners with all its grip. */
export type Car = ReturnType<typeof carFrom>

const gears = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const

export function carFrom(fields: FieldValues, points: readonly Point[]) {
  const number = (path: string): number => fields.get(path) as number
  const radius = number('car.tyreRadius'), finalDrive = number('driveline.finalDrive'), mass = number('car.mass'), grip = number('car.tyreGrip')
  const engine = inertiaSum({ shaft: number('driveline.shaftInertia'), flywheel: number('driveline.flywheelInertia'), clutch: number('driveline.clutchInertia') })
  const limit = tyreLimit({ grip, axleMass: number('car.drivenAxleMass'), radius, height: number('car.centreHeight'), wheelbase: number('car.wheelbase') })
  if (!(limit > 0 && limit < Infinity)) throw new NoAnswer('tyres', 'With this grip and height the car would tip over backwards before its tyres slip: check grip, height and wheelbase.')
  const ratios = gears.map((g) => fields.get(`driveline.gear.${g}`)).filter((r): r is number => typeof r === 'number')
  if (ratios.length === 0) throw new NoAnswer('gearbox', 'The sheet has no gear ratio: without one no lap can be driven.')
  return {
    mass, grip, radius, finalDrive, efficiency: number('driveline.efficiency'), area: number('car.dragArea'), rolling: number('car.rollingResistance'),
    taken: gripForce({ limit, radius }), torque: overSpeed(points, 'engine.torque'), top: number('engine.speedLimit'), least: number('idle.speed'),
    gears: ratios.map((ratio) => ({ ratio, mass: equivalentMassIn({ mass, wheels: number('car.wheelInertia'), radius, engine, ratio, finalDrive }) })),
    density: gasDensity({ pressure: number('site.airPressure'), temperature: number('site.airTemperature') }),
  }
}

/** Gear of greatest force at a road speed, with what it does there; null beyond the top speed of the highest gear. */
export function pullAt(car: Car, v: number, gradient: number) {
  let best: { readonly gear: number; readonly speed: number; readonly force: number; readonly acceleration: number; readonly mass: number } | null = null
  const drag = dragForceAt({ density: car.density, area: car.area, speed: v })
  const resistance = roadResistance({ mass: car.mass, rolling: car.rolling, gradient })
  for (const [gear, { ratio, mass }] of car.gears.entries()) {
    const speed = Math.max((v * ratio * car.finalDrive) / car.radius, car.least)
    if (speed > car.top) continue
    const force = driveForce({ torque: car.torque(speed), ratio, finalDrive: car.finalDrive, efficiency: car.efficiency, radius: car.radius })
    const acceleration = accelerationOf({ drive: force, grip: car.taken, drag, resistance, mass })
    if (!best || acceleration > best.acceleration) best = { gear, speed, force, acceleration, mass }
  }
  return best && { ...best, drag, resistance }
}

const step = 4

/** Drives one flying lap: corners at the limit of grip, full throttle between them, brakes as late as grip allows. Shifts take no time. */
export function drivenLap(circuit: Circuit, car: Car): Lap {
  const nodes = circuit.segments.flatMap(({ length, radius, gradient = 0 }) => {
    const count = Math.max(1, Math.round(length / step))
    return Array.from({ length: count }, () => ({ ds: length / count, gradient, most: radius === undefined ? Infinity : cornerSpeed({ grip: car.grip, radius }) }))
  })
  const n = nodes.length
  const fastest = Math.max(...car.gears.map(({ ratio }) => (car.top * car.radius) / (ratio * car.finalDrive)))
  const v = nodes.map((node) => Math.min(node.most, fastest))
  // Twice round each way: the lap is a flying one.
  for (let k = 0; k < 2 * n; k++) {
    const i = k % n, next = (i + 1) % n, { ds, gradient } = nodes[i]!
    const pull = pullAt(car, v[i]!, gradient)
    const gained = v[i]! ** 2 + 2 * (pull?.acceleration ?? 0) * ds
    v[next] = Math.min(v[next]!, Math.sqrt(Math.max(gained, slowest ** 2)))
  }
  for (let k = 2 * n - 1; k >= 0; k--) {
    const i = k % n, next = (i + 1) % n, { ds, gradient } = nodes[i]!
    const brakes = car.grip * standardGravity.value + standardGravity.value * gradient + dragForceAt({ density: car.density, area: car.area, speed: v[next]! }) / car.mass
    v[i] = Math.min(v[i]!, Math.sqrt(v[next]! ** 2 + 2 * Math.max(brakes, 0.5) * ds))
  }
  return lapOf(circuit.name, nodes.map(({ ds, gradient }, i): Piece => {
    const from = v[i]!, to = v[(i + 1) % n]!
    const seconds = (2 * ds) / (from + to)
    const pull = pullAt(car, from, gradient)
    if (!pull) return { seconds, speed: car.top, carSpeed: ds / seconds, load: 0 }
    const asked = (pull.mass * (to - from)) / seconds + pull.drag + pull.resistance
    return { seconds, speed: pull.speed, carSpeed: ds / seconds, load: Math.min(1, Math.max(0, asked / Math.max(pull.force, 1))) }
  }))
}
const slowest = 5

/** Seconds from one road speed to another at full throttle, level road, each gear to where the next pulls harder; null where the car does not get there. */
export function timeBetween(car: Car, from: number, to: number, steps = 400): number | null {
  let seconds = 0
  const dv = (to - from) / steps
  for (let i = 0; i < steps; i++) {
    const pull = pullAt(car, from + (i + 0.5) * dv, 0)
    if (!pull || pull.acceleration <= 0.02) return null
    seconds += dv / pull.acceleration
  }
  return seconds
}
