/** What a builder is asked first in each section, in the order in which it is found out; the rest follows beneath, by what it belongs to. */
const first: Readonly<Record<string, readonly string[]>> = {
  engine: [
    'engine.rotors', 'engine.describedBy', 'engine.displacement', 'engine.generatingRadius', 'engine.eccentricity', 'engine.width', 'engine.shift', 'engine.compressionRatio', 'engine.speedLimit',
    'engine.veCurve', 'engine.lambdaCurve', 'engine.mapSensorMax', 'site.airPressure', 'site.airTemperature', 'site.humidity', 'idle.speed', 'idle.manifoldPressure', 'idle.lambda',
  ],
  spark: ['spark.layout', 'spark.coils', 'spark.coil.current', 'spark.coil.inductance', 'spark.coil.resistance', 'electric.voltage', 'electric.alternator.curve', 'electric.alternator.pulleyRatio'],
  boost: [
    'boost.target', 'boost.wantedBySpeed', 'boost.compressorMap', 'boost.topSpeed', 'boost.turbineCapacity', 'boost.turbineEfficiency', 'boost.wastegate.number', 'boost.wastegate.diameter',
    'boost.actuator.firstMovement', 'boost.actuator.fullTravel', 'boost.coolerRatedFlow', 'boost.coolerRatedEffectiveness', 'boost.maxChargeTemperature', 'boost.maxBackPressureRatio', 'boost.hotMaterial', 'boost.hotSideLimit',
  ],
  fuel: [
    'fuel.ethanolShare', 'fuel.primary.perRotor', 'fuel.primary.ratedFlow', 'fuel.primary.ratedDrop', 'fuel.primary.deadTime', 'fuel.primary.deadTimeLow', 'fuel.primary.smallestPulse',
    'fuel.secondary.perRotor', 'fuel.secondary.ratedFlow', 'fuel.secondary.ratedDrop', 'fuel.secondary.deadTime', 'fuel.secondary.deadTimeLow', 'fuel.deadTimeVoltage', 'fuel.deadTimeLowVoltage', 'fuel.secondary.smallestPulse', 'fuel.handover.startPressure', 'fuel.handover.width',
    'fuel.regulator.setting', 'fuel.regulator.reference', 'fuel.pump.number', 'fuel.pump.ratedFlow', 'fuel.pump.ratedPressure', 'fuel.pump.secondFlow', 'fuel.pump.secondPressure',
    'fuel.feed.bore', 'fuel.feed.length', 'fuel.return.bore', 'fuel.return.length', 'fuel.railLayout', 'fuel.tank.volume', 'fuel.premix.share',
  ],
  oil: [
    'oil.grade', 'oil.viscosity40', 'oil.viscosity100', 'oil.highShear', 'oil.rotorBearing.clearance', 'oil.rotorBearing.diameter', 'oil.rotorBearing.length', 'oil.mainBearing.clearance', 'oil.mainBearing.diameter',
    'oil.mainBearing.spacing', 'oil.mainBearing.offset', 'oil.hotPressure', 'oil.hotPressureSpeed', 'oil.hotPressureTemperature', 'oil.relief', 'oil.temperatureLimit', 'oil.sealOiling', 'oil.metering.idle', 'oil.metering.full',
  ],
  cooling: [
    'cooling.sustainedShare', 'cooling.carSpeed', 'cooling.coolantLimit', 'cooling.capPressure', 'cooling.glycol', 'cooling.radiator.ratedHeat', 'cooling.radiator.ratedCoolantFlow', 'cooling.radiator.ratedAirFlow',
    'cooling.radiator.ratedCoolantTemperature', 'cooling.radiator.ratedAirTemperature', 'cooling.pump.ratedFlow', 'cooling.pump.ratedSpeed',
  ],
  driveline: [
    'driveline.clutch.rating', 'driveline.clutch.basis', 'driveline.clutch.clamp', 'driveline.clutch.plates', 'driveline.clutch.facingInner', 'driveline.clutch.facingOuter', 'driveline.flywheelSpeed', 'driveline.flywheelInertia',
    'driveline.gearboxRating', 'driveline.differentialRating', 'driveline.halfShaftRating', 'car.mass', 'car.tyreRadius', 'driveline.finalDrive',
    'driveline.gear.first', 'driveline.gear.second', 'driveline.gear.third', 'driveline.gear.fourth', 'driveline.gear.fifth', 'driveline.gear.sixth',
  ],
}

/** The fields of a section: those asked first, and those that most builders leave as they are. */
export function inOrder<T extends { readonly field: { readonly path: string } }>(section: string, entries: readonly T[]): { readonly asked: readonly T[]; readonly left: readonly T[] } {
  const order = first[section] ?? []
  const at = (path: string): T => {
    const found = entries.find((e) => e.field.path === path)
    if (!found) throw new Error(`The section ${section} of the build sheet has no field ${path}`)
    return found
  }
  return { asked: order.map(at), left: entries.filter((e) => !order.includes(e.field.path)) }
}
