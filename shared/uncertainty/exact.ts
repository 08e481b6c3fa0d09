/**
 * Fields that are exact unless the reader says otherwise, by why. What a builder chooses is not found out by measuring: how far the car
 * departs from it is a matter of the controller, not of the sheet.
 */
const chosen = [
  'engine.speedLimit', 'boost.target', 'boost.wantedBySpeed', 'boost.maxBackPressureRatio', 'boost.maxChargeTemperature', 'fuel.handover.startPressure', 'fuel.handover.width',
  'fuel.handover.hysteresis', 'fuel.handover.lambda', 'fuel.dutyLimit', 'fuel.leastDrop', 'fuel.sessionMinutes', 'oil.temperatureLimit', 'oil.filmRatioWanted', 'oil.referenceDose',
  'cooling.coolantLimit', 'spark.coil.current', 'idle.speed', 'engine.throttle.position',
]
/** Weather and road for which the build is judged. */
const conditions = ['site.airPressure', 'site.airTemperature', 'site.humidity', 'cooling.carSpeed', 'electric.alternator.air']
/** The point at which something was rated: what is not known of the rating lies in the figure rated there, and is not counted twice. */
const ratedAt = [
  'fuel.primary.ratedDrop', 'fuel.secondary.ratedDrop', 'fuel.pump.ratedPressure', 'fuel.pump.secondPressure', 'fuel.pump.ratedVoltage', 'fuel.injector.ratedDensity', 'fuel.regulator.fullFlowDrop',
  'boost.coolerRatedFlow', 'oil.cooler.ratedAirFlow', 'oil.cooler.ratedDifference', 'oil.cooler.ratedOilFlow', 'oil.pump.ratedPressure', 'oil.pump.ratedSpeed', 'oil.hotPressureSpeed',
  'cooling.radiator.ratedAirFlow', 'cooling.radiator.ratedAirTemperature', 'cooling.radiator.ratedCoolantFlow', 'cooling.radiator.ratedCoolantTemperature', 'cooling.pump.ratedSpeed',
  'fuel.deadTimeVoltage', 'fuel.deadTimeLowVoltage', 'oil.hotPressureTemperature', 'electric.alternator.ratedAir', 'electric.alternator.hotAir', 'driveline.clutch.lossSpeed',
]
/** A band that the model draws around its answer is a tolerance already. */
const bands = ['boost.turbineEfficiencyBand', 'cooling.exhaustBand']
/** Teeth are counted. */
const counted = ['driveline.finalDrive', 'driveline.gear.first', 'driveline.gear.second', 'driveline.gear.third', 'driveline.gear.fourth', 'driveline.gear.fifth', 'driveline.gear.sixth']

export type Exact = 'chosen' | 'condition' | 'rated at' | 'band' | 'counted'
export const exact: ReadonlyMap<string, Exact> = new Map(
  ([[chosen, 'chosen'], [conditions, 'condition'], [ratedAt, 'rated at'], [bands, 'band'], [counted, 'counted']] as const).flatMap(([paths, why]) => paths.map((path) => [path, why] as const)),
)
