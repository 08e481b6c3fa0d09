import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { engineLambdaCurve, idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { lambdaOnCurve } from '@trochoid/compute/fuel/lambdaOnCurve.ts'
import { handoverWidth, pulseWidth } from '@trochoid/compute/fuel/quantities.ts'
import { stagesOf, type TwoStages } from '@trochoid/compute/fuel/stagesOf.ts'
import twoStageCell from '@trochoid/compute/fuel/twoStageCell.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { shown } from './plot/shown.ts'
import { Moving } from './tools/Moving.tsx'
import { cellAt, summed, type Plan } from './tools/stagePlan.ts'

function from({ sheet, solved }: Build): Plan | null {
  const of: AnyCalculation = twoStageCell
  const curve = valueAt(sheet, engineLambdaCurve), low = valueAt(sheet, idleManifoldPressure)
  const points = solved.points.filter((p) => p.values['fuel.fuelPerCharge'] !== undefined && p.values['fuel.lastInjectorDrop'] !== undefined).filter((_, i, all) => i % 3 === (all.length + 2) % 3)
  if (!curve || low === null || points.length < 3) return null
  try {
    const columns = points.map((p) => {
      const given = valuesFor(of, sheet, p.values) as unknown as TwoStages & { fullFuel: number; full: number; speed: number }
      const { primaryRate, secondaryRate } = stagesOf(given)
      return { speed: given.speed, full: given.full, fuel: (given.fullFuel / given.full) * lambdaOnCurve({ curve, manifold: given.full }), primaryRate, secondaryRate }
    })
    const given = valuesFor(of, sheet, points.at(-1)!.values) as Readonly<Record<string, number>>
    const top = 1.04 * Math.max(...columns.map((c) => c.full))
    const pressures = Array.from({ length: 25 }, (_, i) => low + ((top - low) * i) / 24)
    return {
      columns, pressures, lambdas: pressures.map((manifold) => lambdaOnCurve({ curve, manifold })), idle: { speed: solved.idle.speed, manifold: low },
      primaryDead: given['primaryDeadTime']!, secondaryDead: given['secondaryDeadTime']!, primaryLeast: given['primarySmallest']!, secondaryLeast: given['secondarySmallest']!,
      limit: given['limit']!, start: given['start']!, width: given['width']!, hysteresis: given['hysteresis']!,
    }
  } catch { return null }
}

export default figure<Plan | null>({
  title: 'Two stages over speed and manifold pressure, as you set the hand-over',
  from,
  moves: true,
  summary(plan, system) {
    if (!plan) return 'This build has no full-throttle points with both stages, so nothing is drawn.'
    const p = shown(manifoldPressure, system), t = shown(pulseWidth, system), { primary, secondary, duty } = summed(plan, plan)
    const seconds = Number.isFinite(secondary) ? `the secondaries no less than ${t.say(secondary)} where they repeat from ${t.say(plan.secondaryLeast)} on` : 'the secondaries never work'
    return `As the build stands, hand-over begins at ${p.say(plan.start)} and takes ${shown(handoverWidth, system).say(plan.width)}. Under the full-throttle line the primaries are asked for no less than ${t.say(primary)}, ${seconds}; the busier stage is open up to ${writeNumber(100 * duty, 3)}\u202f% of the turn. Total injected fuel is the fuel of the charge everywhere. Breathing at part throttle is taken as at full throttle.`
  },
  Picture: ({ data, system }) => (data ? <Moving plan={data} system={system} /> : null),
  table(plan, system) {
    const p = shown(manifoldPressure, system), s = shown(shaftSpeed, system), t = shown(pulseWidth, system)
    const columns = plan ? plan.columns.filter((_, i) => i % 3 === 2) : []
    return {
      head: [p.head(), ...columns.map((c) => `${s.say(c.speed)}: primaries, secondaries, ${t.unit}`)],
      rows: (plan?.pressures ?? []).flatMap((pressure, row) => (row % 3 === 0 ? [[writeNumber(p.of(pressure)), ...columns.map((c) => {
        const cell = cellAt(plan!, c, row, plan!)
        return `${writeNumber(t.of(cell.primaryPulse))}, ${cell.secondary > 0 ? writeNumber(t.of(cell.secondaryPulse)) : 'rest'}`
      })]] : [])),
    }
  },
})
