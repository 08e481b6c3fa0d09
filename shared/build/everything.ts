import { type Field } from './field.ts'
import { type Margin } from './margin.ts'
import { chainOf } from './chain.ts'
import * as engineFields from '../engine/fields.ts'
import * as sparkFields from '../spark/fields.ts'
import * as boostFields from '../boost/fields.ts'
import * as fuelFields from '../fuel/fields.ts'
import * as oilFields from '../oil/fields.ts'
import * as coolingFields from '../cooling/fields.ts'
import * as drivelineFields from '../driveline/fields.ts'
import chargingBudget from '../spark/chargingBudget.calc.ts'
import coilCharge from '../spark/coilCharge.calc.ts'
import actuatorHolds from '../boost/actuatorHolds.calc.ts'
import actuatorOpens from '../boost/actuatorOpens.calc.ts'
import backPressureBand from '../boost/backPressureBand.calc.ts'
import engineOnMap from '../boost/engineOnMap.calc.ts'
import hotSide from '../boost/hotSide.calc.ts'
import wastegatePasses from '../boost/wastegatePasses.calc.ts'
import driverCurrent from '../fuel/driverCurrent.calc.ts'
import fuelBlend from '../fuel/fuelBlend.calc.ts'
import fuelPump from '../fuel/fuelPump.calc.ts'
import lineLoss from '../fuel/lineLoss.calc.ts'
import premixOil from '../fuel/premixOil.calc.ts'
import railPressure from '../fuel/railPressure.calc.ts'
import regulatorBypass from '../fuel/regulatorBypass.calc.ts'
import sessionFuel from '../fuel/sessionFuel.calc.ts'
import twoStagePlan from '../fuel/twoStagePlan.calc.ts'
import vapourMargin from '../fuel/vapourMargin.calc.ts'
import mainBearing from '../oil/mainBearing.calc.ts'
import oilFilmViscosity from '../oil/oilFilmViscosity.calc.ts'
import oilSupply from '../oil/oilSupply.calc.ts'
import oilTemperature from '../oil/oilTemperature.calc.ts'
import rotorBearingGas from '../oil/rotorBearingGas.calc.ts'
import rotorBearingInertia from '../oil/rotorBearingInertia.calc.ts'
import sealOil from '../oil/sealOil.calc.ts'
import shaftOilPressure from '../oil/shaftOilPressure.calc.ts'
import boilMargin from '../cooling/boilMargin.calc.ts'
import coolantTemperature from '../cooling/coolantTemperature.calc.ts'
import coolingAir from '../cooling/coolingAir.calc.ts'
import clutchCapacity from '../driveline/clutchCapacity.calc.ts'
import drivelineTorques from '../driveline/drivelineTorques.calc.ts'
import knockMargin from '../engine/knock.margin.ts'
import sparkMargin from '../spark/spark.margin.ts'
import actuatorMargin from '../boost/actuator.margin.ts'
import backPressureMargin from '../boost/backPressure.margin.ts'
import chargeTemperatureMargin from '../boost/chargeTemperature.margin.ts'
import hotSideMargin from '../boost/hotSide.margin.ts'
import mapMargin from '../boost/map.margin.ts'
import thresholdMargin from '../boost/threshold.margin.ts'
import wastegateMargin from '../boost/wastegate.margin.ts'
import fuelPumpFlowMargin from '../fuel/fuelPumpFlow.margin.ts'
import injectorClosingWindowMargin from '../fuel/injectorClosingWindow.margin.ts'
import injectorDriverCurrentMargin from '../fuel/injectorDriverCurrent.margin.ts'
import lastInjectorPressureMargin from '../fuel/lastInjectorPressure.margin.ts'
import primaryPulseIdleMargin from '../fuel/primaryPulseIdle.margin.ts'
import regulatorBypassIdleMargin from '../fuel/regulatorBypassIdle.margin.ts'
import secondaryPulseHandoverMargin from '../fuel/secondaryPulseHandover.margin.ts'
import sessionFuelMargin from '../fuel/sessionFuel.margin.ts'
import vapourHotStopMargin from '../fuel/vapourHotStop.margin.ts'
import boilMarginMargin from '../cooling/boilMargin.margin.ts'
import coolantTemperatureMargin from '../cooling/coolantTemperature.margin.ts'
import clutchMargin from '../driveline/clutch.margin.ts'
import drivelineMargin from '../driveline/driveline.margin.ts'
import flywheelMargin from '../driveline/flywheel.margin.ts'

/** Every field of the build sheet, by path, in the order of the sheet. */
export const allFields: ReadonlyMap<string, Field> = new Map(
  [engineFields, sparkFields, boostFields, fuelFields, oilFields, coolingFields, drivelineFields].flatMap((module) => Object.values(module) as Field[]).map((field) => [field.path, field]),
)

/** Calculations whose answers are values of the solved point, each after those it stands on. */
export const chain = chainOf([
  chargingBudget, coilCharge, actuatorHolds, actuatorOpens, backPressureBand, engineOnMap, hotSide, wastegatePasses, driverCurrent, fuelBlend, fuelPump, lineLoss, premixOil, railPressure, regulatorBypass, sessionFuel, twoStagePlan, vapourMargin, mainBearing, oilFilmViscosity, oilSupply, oilTemperature, rotorBearingGas, rotorBearingInertia, sealOil, shaftOilPressure, boilMargin, coolantTemperature, coolingAir, clutchCapacity, drivelineTorques,
])

/** Every link of the chain that is weighed. */
export const margins: readonly Margin[] = [
  knockMargin, sparkMargin, actuatorMargin, backPressureMargin, chargeTemperatureMargin, hotSideMargin, mapMargin, thresholdMargin, wastegateMargin, fuelPumpFlowMargin, injectorClosingWindowMargin, injectorDriverCurrentMargin, lastInjectorPressureMargin, primaryPulseIdleMargin, regulatorBypassIdleMargin, secondaryPulseHandoverMargin, sessionFuelMargin, vapourHotStopMargin, boilMarginMargin, coolantTemperatureMargin, clutchMargin, drivelineMargin, flywheelMargin,
].flat()
