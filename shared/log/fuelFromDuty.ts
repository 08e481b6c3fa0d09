import { type FieldValues } from '../build/fieldValues.ts'
import { injectorFlowAt } from '../fuel/injectorFlowAt.ts'
import { injectorFlowOfFluid } from '../fuel/injectorFlowOfFluid.ts'
import { nozzleDropOf } from '../fuel/nozzleDropOf.ts'
import { stageMassFlow } from '../fuel/stageMassFlow.ts'
import { turnTimeOf } from '../fuel/turnTimeOf.ts'
import { overSpeed } from '../session/overSpeed.ts'
import { type Point } from '../build/point.ts'
import { manifoldOf } from './compare.ts'
import { type Log } from './log.ts'

/**
 * Fuel that the engine was given at a row of the log: duty of each stage, less its dead time, times what the sheet's injectors pass at the
 * pressure across them. Null where the log has no duty of a stage that the sheet has.
 */
export function fuelFromDuty(log: Log, fields: FieldValues, points: readonly Point[]): ((i: number) => number) | null {
  const number = (path: string): number => fields.get(path) as number
  const { of } = log
  const outside = number('site.airPressure')
  const manifold = manifoldOf(of, outside)
  if (!of.primaryDuty || !manifold || (number('fuel.secondary.perRotor') > 0 && !of.secondaryDuty)) return null
  const density = overSpeed(points, 'fuel.density')(0), predictedRail = overSpeed(points, 'fuel.railPressure'), ratedDensity = number('fuel.injector.ratedDensity')
  const lost = linkLossOver(points)
  const stage = (name: 'primary' | 'secondary', duty: ArrayLike<number> | undefined) => {
    const per = number(`fuel.${name}.perRotor`), ratedFlow = number(`fuel.${name}.ratedFlow`), ratedDrop = number(`fuel.${name}.ratedDrop`), dead = number(`fuel.${name}.deadTime`)
    return (i: number, drop: number, turn: number): number => {
      const open = duty && per > 0 ? duty[i]! * turn - dead : 0
      if (!(open > 0)) return duty && Number.isNaN(duty[i]!) ? NaN : 0
      return stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow, drop, ratedDrop }), ratedDensity, density }), number: per, density }) * (open / turn)
    }
  }
  const primary = stage('primary', of.primaryDuty), secondary = stage('secondary', of.secondaryDuty)
  const rotors = number('engine.rotors')
  return (i) => {
    const speed = of.speed![i]!
    const rail = of.fuelPressure ? of.fuelPressure[i]! : predictedRail(speed)
    const drop = nozzleDropOf({ rail, outside, manifold: manifold[i]! })
    if (!(drop > 0)) return NaN
    const turn = turnTimeOf({ speed })
    return rotors * (primary(i, drop, turn) + secondary(i, Math.max(drop - lost(speed), 1), turn))
  }
}

/** Pressure lost from the first nozzle to the last, as the sheet has it. */
function linkLossOver(points: readonly Point[]): (speed: number) => number {
  const first = overSpeed(points, 'fuel.nozzleDrop'), last = overSpeed(points, 'fuel.lastInjectorDrop')
  return (speed) => first(speed) - last(speed)
}
