import timeToBoost from '@trochoid/compute/boost/timeToBoost.calc.ts'
import { boostTargetCurve, compressorMapOf, topSpeed, turbineCapacity, turbineEfficiencyOf, turboInertiaOf, turbosFitted } from '@trochoid/compute/boost/fields.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import { setEntry, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import type { Side } from '@trochoid/compute/comparison/side.ts'
import type { CompressorMap, Quantity } from '@trochoid/compute/quantity/quantity.ts'

/** What sets one turbocharger apart from another on the same build. */
export type Turbo = { readonly name: string; readonly map: CompressorMap; readonly numbers: Readonly<Record<string, number>> }
/** Its numbers besides the map, as the build sheet has them. */
export const turboFields: readonly Field<Quantity>[] = [turbosFitted, turbineCapacity, turbineEfficiencyOf, turboInertiaOf]

/** The turbocharger that a build has. */
export function turboOf(sheet: Sheet): Turbo {
  const map = valueAt(sheet, compressorMapOf) as CompressorMap
  return { name: map.name, map, numbers: Object.fromEntries(turboFields.map((field) => [field.path, (valueAt(sheet, field) ?? field.start ?? 0) as number])) }
}

/** The same build with another turbocharger. What its maker permits as top speed is not known of it: the map's top line stands in. */
export function withTurbo(sheet: Sheet, { name, map, numbers }: Turbo): Sheet {
  let next = setEntry(sheet, compressorMapOf.path, { value: map, from: 'guess' })
  for (const [path, value] of Object.entries(numbers)) next = setEntry(next, path, { value, from: 'guess' })
  return { ...setEntry(next, topSpeed.path, { value: null }), name }
}

/**
 * A turbocharger with another map, its other numbers guessed from those of the build's own as if both were of one shape: flow and
 * turbine capacity go with the square of size, inertia with its fifth power (similarity; a first guess, to be put right).
 */
export function turboLike(own: Turbo, map: CompressorMap): Turbo {
  const wide = (of: CompressorMap): number => Math.max(...of.lines.flatMap(({ flow }) => flow))
  const larger = wide(map) / wide(own.map)
  return { name: map.name, map, numbers: { ...own.numbers, [turbineCapacity.path]: own.numbers[turbineCapacity.path]! * larger, [turboInertiaOf.path]: own.numbers[turboInertiaOf.path]! * larger ** 2.5 } }
}

/**
 * Time from the throttle's opening until nine tenths of the wanted boost are there. Both turbochargers are taken to turn at a
 * quarter of their map's top line when it opens, since a small and a large one do not idle along at the same speed.
 */
export function timeUntilBoost({ sheet, solved }: Side, shaft: number): number | string {
  const { map } = turboOf(sheet)
  const wanted = Math.max(...(valueAt(sheet, boostTargetCurve)?.y ?? [1e5]))
  try {
    const answer = run(timeToBoost, { ...valuesFor(timeToBoost, sheet, demoPoint(solved)), boost: wanted, shaft, start: map.lines.at(-1)!.speed / 4 })
    return answer.outputs['time']!
  } catch (error) {
    if (error instanceof NoAnswer) return error.message
    throw error
  }
}

export type Figures = Readonly<Record<'threshold' | 'surge' | 'choke' | 'speed' | 'charge' | 'back' | 'exhaust' | 'compressor' | 'power', { readonly value: number; readonly at: number | null } | null>>

/** What the sweep says of one turbocharger, each where it is worst or greatest. */
export function figuresOf({ solved: { points, build } }: Side): Figures {
  const reach = (path: string, better: (a: number, b: number) => boolean, only: (values: Readonly<Record<string, number>>) => boolean = () => true) => points.reduce<{ value: number; at: number } | null>((best, { speed, values }) => {
    const value = values[path]
    return value === undefined || !only(values) || (best && !better(value, best.value)) ? best : { value, at: speed }
  }, null)
  const more = (a: number, b: number) => a > b
  const less = (a: number, b: number) => a < b
  const onMap = (values: Readonly<Record<string, number>>) => (values['boost.overLowestLine'] ?? 0) >= 1
  const threshold = build['boost.thresholdSpeed']
  return {
    threshold: threshold === undefined ? null : { value: threshold, at: null },
    surge: reach('boost.surgeMargin', less, onMap), choke: reach('boost.chokeMargin', less), speed: reach('boost.topSpeedShare', more), charge: reach('engine.chargeTemperature', more), back: reach('engine.backPressureRatio', more),
    exhaust: reach('cooling.exhaustTemperature', more), compressor: reach('boost.compressorPower', more), power: reach('engine.power', more),
  }
}
