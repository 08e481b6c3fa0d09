import { allFields, margins } from '../build/everything.ts'
import { weighMargins } from '../build/margins.ts'
import { valueAt, type Sheet } from '../build/sheet.ts'
import { solveBuild, sweepSpeeds } from '../build/solve.ts'
import { type Model } from './sampling.ts'

const limit = allFields.get('engine.speedLimit')!

/** The coupled model of a whole build with its margins. */
export const wholeModel: Model = {
  fields: allFields,
  weigh: (sheet, thresholds, speeds) => weighMargins(margins, solveBuild(sheet, speeds), sheet, thresholds),
  speeds: (sheet: Sheet) => { const value: unknown = valueAt(sheet, limit); return typeof value === 'number' ? sweepSpeeds(value) : [] },
}
