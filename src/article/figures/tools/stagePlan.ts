import { stageFuel } from '@trochoid/compute/fuel/stageFuel.ts'
import { stageState } from '@trochoid/compute/fuel/stageState.ts'

/** One shaft speed of a plan: fuel of a charge for each unit of manifold pressure at lambda one, and the flow of both stages. SI. */
export type Column = { readonly speed: number; readonly full: number; readonly fuel: number; readonly primaryRate: number; readonly secondaryRate: number }
/** All that a plan of two stages is drawn from: small, so that it moves in the browser without the coupled model. */
export type Plan = {
  readonly columns: readonly Column[]; readonly pressures: readonly number[]; readonly lambdas: readonly number[]
  readonly primaryDead: number; readonly secondaryDead: number; readonly primaryLeast: number; readonly secondaryLeast: number; readonly limit: number
  readonly start: number; readonly width: number; readonly hysteresis: number; readonly idle: { readonly speed: number; readonly manifold: number }
}
export type Cell = { readonly fuel: number; readonly primary: number; readonly secondary: number; readonly primaryPulse: number; readonly secondaryPulse: number; readonly duty: number; readonly fault: number }

/** Both stages at one place of the plan, load rising. */
export function cellAt(plan: Plan, column: Column, row: number, { start, width }: { readonly start: number; readonly width: number }): Cell {
  const manifold = plan.pressures[row]!
  const fuel = (column.fuel * manifold) / plan.lambdas[row]!
  const parts = stageFuel({
    fuel, manifold, start, width, gate: start, fullShare: column.secondaryRate / (column.primaryRate + column.secondaryRate),
    primaryLeast: (plan.primaryLeast - plan.primaryDead) * column.primaryRate, secondaryLeast: (plan.secondaryLeast - plan.secondaryDead) * column.secondaryRate,
  })
  const primaryPulse = plan.primaryDead + parts.primary / column.primaryRate
  const secondaryPulse = parts.secondary > 0 ? plan.secondaryDead + parts.secondary / column.secondaryRate : 0
  const turn = (2 * Math.PI) / column.speed
  return {
    fuel, primary: parts.primary, secondary: parts.secondary, primaryPulse, secondaryPulse, duty: Math.max(primaryPulse, secondaryPulse) / turn,
    fault: stageState({ primaryPulse, secondaryPulse, primaryLeast: plan.primaryLeast, secondaryLeast: plan.secondaryLeast, longest: plan.limit * turn, wanted: parts.wanted, given: parts.secondary }),
  }
}

/** What a plan comes to: its smallest pulses, its busiest place, and how many places of each kind of fault lie under the full-throttle line. */
export function summed(plan: Plan, asked: { readonly start: number; readonly width: number }) {
  let primary = Infinity, secondary = Infinity, duty = 0, step = 0
  const faults = [0, 0, 0, 0, 0]
  for (const column of plan.columns) plan.pressures.forEach((manifold, row) => {
    if (manifold > column.full) return
    const cell = cellAt(plan, column, row, asked)
    primary = Math.min(primary, cell.primaryPulse)
    if (cell.secondary > 0) secondary = Math.min(secondary, cell.secondaryPulse)
    duty = Math.max(duty, cell.duty)
    step = Math.max(step, Math.abs(cell.primary + cell.secondary - cell.fuel) / cell.fuel)
    faults[cell.fault]!++
  })
  return { primary, secondary, duty, step, faults }
}

