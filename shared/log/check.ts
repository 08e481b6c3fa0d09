import { fieldValues } from '../build/fieldValues.ts'
import { type Sheet } from '../build/sheet.ts'
import { solveBuild } from '../build/solve.ts'
import { coreMissing } from '../build/given.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { blendStoichiometry } from '../fuel/blendStoichiometry.ts'
import { untraced } from '../formula/trace.ts'
import { bandsOf, lay, type Laid } from './compare.ts'
import { diagnose, type Diagnosis } from './diagnose.ts'
import { type Log } from './log.ts'
import { type Pull } from './pulls.ts'
import { fitVe, type NoFit, type VeFit } from './veFit.ts'

export type LogCheck = { readonly pull: Pull; readonly laid: readonly Laid[]; readonly ve: ({ readonly ok: true } & VeFit) | NoFit; readonly diagnosis: Diagnosis }

/** Air by mass that the sheet's fuel needs: for logs that tell air over fuel and not lambda. */
export function stoichiometricOf(sheet: Sheet): number {
  const fields = fieldValues(sheet)
  const number = (path: string): number => fields.get(path) as number
  return untraced(() => blendStoichiometry({ ethanolShare: number('fuel.ethanolShare'), petrolDensity: number('fuel.petrol.density'), petrolHydrogen: number('fuel.petrol.hydrogenToCarbon') }))
}

/** One pull of a log laid over a sheet, with what it says of the sheet. Yields how much is done. */
export function* checkLog(sheet: Sheet, log: Log, pull: Pull): Generator<number, LogCheck> {
  const fields = fieldValues(sheet)
  const open = coreMissing(fields)
  if (open.length > 0) throw new NoAnswer('core', `The sheet waits for: ${open.join(', ')}. Without it there is nothing to lay the log over.`)
  if (pull.to - pull.from < 12) throw new NoAnswer('pull', 'This stretch holds fewer than a dozen rows: choose a longer one.')
  const bands = bandsOf(log, pull)
  const { points } = solveBuild(sheet, bands)
  if (points.every((p) => p.values['engine.power'] === undefined)) throw new NoAnswer('core', 'At none of the pull’s speeds does the sheet have a solution: look at its margins first.')
  const laid = lay(log, pull, points, fields.get('site.airPressure') as number)
  yield 0.1
  const ve = untraced(() => fitVe(log, pull, fields, points, stoichiometricOf(sheet)))
  yield 0.15
  const work = diagnose(sheet, log, pull, bands)
  for (;;) {
    const step = work.next()
    if (step.done) return { pull, laid, ve, diagnosis: step.value }
    yield 0.15 + 0.85 * step.value
  }
}
