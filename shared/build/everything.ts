import { type Field } from './field.ts'
import { type Margin } from './margin.ts'
import { chainOf } from './chain.ts'
import * as engineFields from '../engine/fields.ts'
import * as boostFields from '../boost/fields.ts'
import * as fuelFields from '../fuel/fields.ts'
import * as oilFields from '../oil/fields.ts'
import * as coolingFields from '../cooling/fields.ts'
import * as drivelineFields from '../driveline/fields.ts'
import clutchCapacity from '../driveline/clutchCapacity.calc.ts'
import drivelineTorques from '../driveline/drivelineTorques.calc.ts'
import knockMargin from '../engine/knock.margin.ts'
import clutchMargin from '../driveline/clutch.margin.ts'
import drivelineMargin from '../driveline/driveline.margin.ts'

/** Every field of the build sheet, by path, in the order of the sheet. */
export const allFields: ReadonlyMap<string, Field> = new Map(
  [engineFields, boostFields, fuelFields, oilFields, coolingFields, drivelineFields].flatMap((module) => Object.values(module) as Field[]).map((field) => [field.path, field]),
)

/** Calculations whose answers are values of the solved point, each after those it stands on. */
export const chain = chainOf([
  clutchCapacity, drivelineTorques,
])

/** Every link of the chain that is weighed. */
export const margins: readonly Margin[] = [
  knockMargin, clutchMargin, drivelineMargin,
].flat()
