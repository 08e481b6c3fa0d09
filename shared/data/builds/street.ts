import { bar, ccPerMin, kPa, lPerH, mm, ms, rpm } from '../../quantity/si.ts'
import { inventedBuild } from './build.ts'

/** An invented street car: one bar of boost, petrol, a build half measured. */
export const street = inventedBuild('Street build (invented)', 'An invented car of an invented workshop. No engine, maker or part is meant.', {
  'engine.compressionRatio': [9, 'measured', 'Burette, both rotors, all faces'],
  'engine.mapSensorMax': [kPa(300), 'maker'],
  'engine.speedLimit': [rpm(8000), 'common'],
  'fuel.primary.ratedFlow': [ccPerMin(650), 'measured', 'Flowed as a set, within 2 %'],
  'fuel.primary.ratedDrop': [bar(3), 'measured'],
  'fuel.primary.deadTime': [ms(0.9), 'maker'],
  'fuel.secondary.ratedFlow': [ccPerMin(1600), 'maker'],
  'fuel.regulator.fullFlow': [lPerH(400), 'maker'],
  'fuel.driver.rating': [4, 'maker'],
  'fuel.heldPressure': [bar(2.5), 'measured', 'Ten minutes after switching off, bonnet shut'],
  'oil.rotorBearing.clearance': [mm(0.06), 'measured', 'Bore, fitted, minus journal'],
  'oil.hotPressure': [bar(4.2), 'measured', 'Oil at 95 °C'],
  'boost.coolerRatedEffectiveness': [0.72, 'maker'],
  'boost.actuator.firstMovement': [bar(0.7), 'measured', 'On the bench, hand pump and dial gauge'],
  'boost.actuator.fullTravel': [bar(1.0), 'measured'],
  'boost.actuator.springPreload': [315, 'measured', 'Bench pressure of first movement times the diaphragm’s area'],
  'boost.actuator.springRate': [12300, 'measured', 'Both bench pressures and the travel between them'],
  'boost.actuator.controlShare': [0.8, 'maker'],
  'boost.topSpeed': [rpm(135000), 'maker'],
  'driveline.clutch.rating': [550, 'maker'],
  'driveline.flywheelSpeed': [rpm(9000), 'maker'],
  'driveline.gearboxRating': [480, 'guess'],
})
