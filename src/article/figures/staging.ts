import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { Point } from '@trochoid/compute/build/point.ts'
import { valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { engineLambdaCurve } from '@trochoid/compute/engine/fields.ts'
import { fuelAtHandover } from '@trochoid/compute/fuel/fuelAtHandover.ts'
import railPressure from '@trochoid/compute/fuel/railPressure.calc.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'
import { hermiteAt, monotoneSlopes } from '@trochoid/compute/numerics/monotone.ts'

/** Both stages at one manifold pressure: fuel of a charge, pulses, the duty of the stage that is open longest. SI. */
export type Stages = { readonly manifold: number; readonly fuel: number; readonly primary: number; readonly secondary: number; readonly duty: number }
/** A controller that is asked for another hand-over than the sheet's. */
type Asked = { readonly start?: number; readonly width?: number }

/**
 * The two-stage plan at the shaft speed of a solved point, for any manifold pressure: breathing and charge temperature stay those
 * of full throttle, the mixture follows the sheet's own curve.
 */
export function stagesAt(sheet: Sheet, { values }: Point): (manifold: number, asked?: Asked) => Stages | null {
  const curve = valueAt(sheet, engineLambdaCurve)
  const full = values['engine.manifoldPressure']
  const fuel = values['fuel.fuelPerCharge']
  const lambda = values['engine.lambda']
  if (!curve || full === undefined || fuel === undefined || lambda === undefined) return () => null
  const slopes = monotoneSlopes(curve.x, curve.y)
  const lambdaAt = (manifold: number): number => hermiteAt(curve.x, curve.y, slopes, Math.min(Math.max(manifold, curve.x[0]!), curve.x.at(-1)!))
  const plan: AnyCalculation = twoStagePlan
  const rail: AnyCalculation = railPressure
  const given = valuesFor(plan, sheet, values)
  return (manifold, asked = {}) => {
    const charge = fuelAtHandover({ fuel, manifold: full, handover: manifold, lambda, handoverLambda: lambdaAt(manifold) })
    try {
      const { drop, lastDrop } = rail.answer(valuesFor(rail, sheet, { ...values, 'engine.manifoldPressure': manifold }))
      const out = plan.answer({ ...given, manifold, fuel: charge, drop, lastDrop, ...asked })
      return { manifold, fuel: charge, primary: out['primaryPulse']!, secondary: out['secondaryPulse']!, duty: out['worstDuty']! }
    } catch { return null }
  }
}

/** The lowest shaft speed of the sweep that has its full manifold pressure, all but two in a hundred. */
export function firstFull(points: readonly Point[]): Point | undefined {
  const pressure = (p: Point): number => p.values['engine.manifoldPressure'] ?? 0
  const most = Math.max(0, ...points.map(pressure))
  return points.find((p) => most > 0 && pressure(p) >= 0.98 * most)
}
