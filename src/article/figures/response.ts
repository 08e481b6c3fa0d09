import timeToBoost from '@trochoid/compute/boost/timeToBoost.calc.ts'
import { boostTargetCurve } from '@trochoid/compute/boost/fields.ts'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { NoAnswer, run, type Values } from '@trochoid/compute/calculation/calculation.ts'
import type { Build } from './figure.ts'

/** What a step of the throttle asks of a build, at the greatest boost that its sheet wants. */
export const stepOf = ({ sheet, point }: Build): Values => ({ ...valuesFor(timeToBoost, sheet, point), boost: Math.max(...(valueAt(sheet, boostTargetCurve)?.y ?? [1e5])) })

/** Seconds until boost is there; null where it does not come. */
export function secondsUntil(step: Values, change: Values): number | null {
  try {
    return run(timeToBoost, { ...step, ...change }).outputs['time']!
  } catch (error) {
    if (error instanceof NoAnswer) return null
    throw error
  }
}
