import { type FieldValues } from '../build/fieldValues.ts'
import { type Point } from '../build/point.ts'
import { dryAirPressure } from '../engine/dryAirPressure.ts'
import { describedDisplacement } from '../engine/describedDisplacement.ts'
import { airMassFlow } from '../engine/airMassFlow.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { type Points } from '../quantity/quantity.ts'
import { overSpeed } from '../session/overSpeed.ts'
import { manifoldOf } from './compare.ts'
import { fuelFromDuty } from './fuelFromDuty.ts'
import { leastSquares } from './leastSquares.ts'
import { type Log } from './log.ts'
import { type Pull } from './pulls.ts'

/** Volumetric efficiency at the sheet's own back-pressure ratio, fitted at the sheet's own speeds; null where the pull does not reach. */
export type VeFit = {
  readonly speeds: readonly number[]; readonly sheet: readonly number[]; readonly fitted: readonly (number | null)[]; readonly error: readonly (number | null)[]
  /** What the log's fuel is over the sheet's, as a ratio, with its standard error. */
  readonly fuel: { readonly ratio: number; readonly error: number }
  readonly rows: number
  /** The whole curve as the sheet would take it: where the pull does not reach, the sheet's shape goes on. */
  readonly curve: Points
}
export type NoFit = { readonly ok: false; readonly says: string }

/**
 * Air from fuel: what the injectors gave times lambda and the air that the fuel needs, over what the chambers would hold at the density in
 * the manifold. The log already holds the back-pressure of its moment: it is carried to the sheet's ratio by what the model makes of the
 * same curve, and so never corrected twice.
 */
export function fitVe(log: Log, pull: Pull, fields: FieldValues, points: readonly Point[], stoichiometric: number): ({ readonly ok: true } & VeFit) | NoFit {
  const number = (path: string): number => fields.get(path) as number
  const { of } = log
  const fuel = fuelFromDuty(log, fields, points)
  if (!of.lambda || !fuel) return { ok: false, says: 'Fitting air needs lambda, manifold pressure or boost, and the duty of each injector stage in the log.' }
  const curve = fields.get('engine.veCurve') as Points
  const outside = number('site.airPressure'), temperature = number('site.airTemperature')
  const moisture = vapourShare({ vapourPressure: vapourPressure({ humidity: number('site.humidity'), saturation: saturationPressure({ temperature }) }), pressure: outside })
  const displacement = describedDisplacement({ describedBy: fields.get('engine.describedBy') as 'geometry', generatingRadius: number('engine.generatingRadius'), eccentricity: number('engine.eccentricity'), width: number('engine.width'), shift: number('engine.shift'), stated: number('engine.displacement') })
  const rotors = number('engine.rotors')
  const manifold = manifoldOf(of, outside)!
  const chargeModel = overSpeed(points, 'engine.chargeTemperature'), veModel = overSpeed(points, 'engine.volumetricEfficiency'), fuelModel = overSpeed(points, 'fuel.massFlow')
  const sheetVe = lineOver(curve)

  const low = of.speed![pull.from]!, high = of.speed![pull.to]!
  const inside = curve.x.map((x, i) => ({ x, i })).filter(({ x }) => x >= low * 0.98 && x <= high * 1.02)
  if (inside.length < 2) return { ok: false, says: 'The pull covers fewer than two speeds of the sheet’s curve: choose a longer one.' }
  const knots = inside.map(({ x }) => x)
  const rows: number[][] = [], b: number[] = []
  let ratio = 0, squares = 0, count = 0
  for (let i = pull.from; i <= pull.to; i++) {
    const speed = of.speed![i]!
    const given = fuel(i)
    const charge = of.charge ? of.charge[i]! : chargeModel(speed)
    const full = airMassFlow({ volumetricEfficiency: 1, density: gasDensity({ pressure: dryAirPressure({ pressure: manifold[i]!, share: moisture }), temperature: charge }), displacement, rotors, speed })
    const measured = (given * of.lambda[i]! * stoichiometric) / full
    if (!Number.isFinite(measured) || !(measured > 0)) continue
    const atSheet = (measured / veModel(speed)) * sheetVe(speed)
    const r = given / fuelModel(speed)
    ratio += r
    squares += r * r
    count++
    if (speed < knots[0]! || speed > knots.at(-1)!) continue
    rows.push(hats(knots, speed))
    b.push(atSheet)
  }
  const fit = rows.length > knots.length + 4 ? leastSquares(rows, b, knots.length) : null
  if (!fit) return { ok: false, says: 'Too few rows of this pull hold fuel, lambda and pressure together.' }
  const variance = fit.squares / Math.max(1, fit.free)
  const fitted: (number | null)[] = curve.x.map(() => null), error: (number | null)[] = curve.x.map(() => null)
  for (const [k, { i }] of inside.entries()) { fitted[i] = fit.x[k]!; error[i] = Math.sqrt(variance * fit.covariance[k]![k]!) }
  const first = inside[0]!.i, last = inside.at(-1)!.i
  const scaled = (i: number, by: number): number => curve.y[i]! * (fitted[by]! / curve.y[by]!)
  const mean = ratio / count
  return {
    ok: true, speeds: curve.x, sheet: curve.y, fitted, error, rows: rows.length, fuel: { ratio: mean, error: Math.sqrt(Math.max(0, squares / count - mean * mean) / count) },
    curve: { x: curve.x, y: curve.x.map((_, i) => fitted[i] ?? scaled(i, i < first ? first : last)) },
  }
}

/** Shares of two neighbouring knots in a value between them. */
function hats(knots: readonly number[], at: number): number[] {
  const row = knots.map(() => 0)
  let k = 0
  while (k < knots.length - 2 && at > knots[k + 1]!) k++
  const u = (at - knots[k]!) / (knots[k + 1]! - knots[k]!)
  row[k] = 1 - u
  row[k + 1] = u
  return row
}
const lineOver = ({ x, y }: Points) => (at: number): number => {
  if (at <= x[0]!) return y[0]!
  for (let i = 1; i < x.length; i++) if (at <= x[i]!) return y[i - 1]! + ((y[i]! - y[i - 1]!) * (at - x[i - 1]!)) / (x[i]! - x[i - 1]!)
  return y.at(-1)!
}
