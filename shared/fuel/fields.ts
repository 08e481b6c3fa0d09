import { field } from '../build/field.ts'
import { bar, ccPerMin, degC, kPa, lPerH, litre, minutes, mm, ms, percent, um } from '../quantity/si.ts'
import { lambda } from '../engine/quantities.ts'
import { coilVoltage } from '../spark/quantities.ts'
import {
  coilResistance, deadTime, driverCurrent, dutyLimit, ethanolShare, fittingLoss, flowShare, fuelDensity, fuelTemperature, fuelViscosity, handoverPressure,
  handoverWidth, heatingValue, hydrogenToCarbon, injectorFlow, injectorsPerDriver, injectorsPerRotor, lineBore, lineLength, nozzleDrop, premixOilDensity,
  premixShare, pumpFlow, pumpPressure, pumps, pumpVoltage, railLayout, railPressure, regulatorPlace, regulatorReference, reidPressure, seriesResistance,
  sessionTime, smallestPulse, tankVolume, voltageExponent, wallRoughness, wiringDrop,
} from './quantities.ts'

export const fuelEthanol = field('fuel.ethanolShare', ethanolShare, percent(5))
export const petrolDensity = field('fuel.petrol.density', fuelDensity, 745, { label: 'Density of the petrol at 15 °C, without its ethanol' })
export const petrolHydrogen = field('fuel.petrol.hydrogenToCarbon', hydrogenToCarbon, 1.85, { label: 'Hydrogen atoms per carbon atom of the petrol' })
export const petrolHeatingValue = field('fuel.petrol.heatingValue', heatingValue, 43.4e6, { label: 'Lower heating value of the petrol, without its ethanol' })
export const fuelVapour37 = field('fuel.vapourPressure37', reidPressure, kPa(60))
export const viscosity = field('fuel.viscosity', fuelViscosity, 0.292e-3, { label: 'Dynamic viscosity of the fuel at 20 °C' })
export const runningTemperature = field('fuel.temperature', fuelTemperature, degC(40), { label: 'Temperature of the fuel in the rail while running' })
export const soakTemperature = field('fuel.soakTemperature', fuelTemperature, degC(75), { label: 'Temperature of the rail after a hot stop' })

export const primaryFlow = field('fuel.primary.ratedFlow', injectorFlow, ccPerMin(650), { at: 'fuel.primary.ratedDrop', label: 'Rated flow of a primary' })
export const primaryRatedDrop = field('fuel.primary.ratedDrop', nozzleDrop, bar(3), { label: 'Pressure at which the primary is rated' })
export const primaryDeadTime = field('fuel.primary.deadTime', deadTime, ms(0.9), { label: 'Dead time of a primary' })
export const primarySmallestPulse = field('fuel.primary.smallestPulse', smallestPulse, ms(1.6), { label: 'Smallest repeatable pulse of a primary' })
export const primariesPerRotor = field('fuel.primary.perRotor', injectorsPerRotor, 1, { label: 'Primaries per rotor' })
export const secondaryFlow = field('fuel.secondary.ratedFlow', injectorFlow, ccPerMin(1600), { at: 'fuel.secondary.ratedDrop', label: 'Rated flow of a secondary' })
export const secondaryRatedDrop = field('fuel.secondary.ratedDrop', nozzleDrop, bar(3), { label: 'Pressure at which the secondary is rated' })
export const secondaryDeadTime = field('fuel.secondary.deadTime', deadTime, ms(1), { label: 'Dead time of a secondary' })
export const secondarySmallestPulse = field('fuel.secondary.smallestPulse', smallestPulse, ms(1.8), { label: 'Smallest repeatable pulse of a secondary' })
export const secondariesPerRotor = field('fuel.secondary.perRotor', injectorsPerRotor, 1, { label: 'Secondaries per rotor' })
export const deadTimeVoltage = field('fuel.deadTimeVoltage', coilVoltage, 13.8, { label: 'Voltage at which dead times are stated' })
export const deadTimeLowVoltage = field('fuel.deadTimeLowVoltage', coilVoltage, 10, { label: 'Second, lower voltage at which they are stated' })
export const primaryDeadTimeLow = field('fuel.primary.deadTimeLow', deadTime, ms(1.5), { label: 'Dead time of a primary at the lower voltage' })
export const secondaryDeadTimeLow = field('fuel.secondary.deadTimeLow', deadTime, ms(1.65), { label: 'Dead time of a secondary at the lower voltage' })
export const ratedFluidDensity = field('fuel.injector.ratedDensity', fuelDensity, 684, { label: 'Density of the fluid the injectors were rated with' })
export const longestDuty = field('fuel.dutyLimit', dutyLimit, 1)
export const handoverStart = field('fuel.handover.startPressure', handoverPressure, kPa(90), { label: 'Manifold pressure at which secondaries begin' })
export const handoverBlend = field('fuel.handover.width', handoverWidth, kPa(30), { label: 'Width over which secondaries come to their full share' })
export const handoverLambda = field('fuel.handover.lambda', lambda, 0.9, { label: 'Lambda where the secondaries begin' })
export const handoverHysteresis = field('fuel.handover.hysteresis', handoverWidth, kPa(8), { label: 'Fall in manifold pressure before secondaries stop' })

export const regulatorSetting = field('fuel.regulator.setting', railPressure, bar(3.5), { label: 'Regulator setting with outside air at its reference' })
export const regulatorRefers = field('fuel.regulator.reference', regulatorReference, 'manifold')
export const regulatorStands = field('fuel.regulator.place', regulatorPlace, 'after')
export const regulatorFullFlow = field('fuel.regulator.fullFlow', pumpFlow, null, { at: 'fuel.regulator.fullFlowDrop', label: 'Flow the wide-open regulator passes' })
export const regulatorFullDrop = field('fuel.regulator.fullFlowDrop', nozzleDrop, bar(2), { label: 'Pressure across the regulator at that flow' })
export const leastDrop = field('fuel.leastDrop', nozzleDrop, bar(3), { label: 'Least pressure across a nozzle that the injector data cover' })

export const feedBore = field('fuel.feed.bore', lineBore, mm(7.94), { label: 'Bore of the feed' })
export const feedLength = field('fuel.feed.length', lineLength, 4, { label: 'Length of the feed' })
export const feedFittings = field('fuel.feed.fittings', fittingLoss, 8, { label: 'Loss coefficients of filter and fittings in the feed, summed' })
export const linkBore = field('fuel.link.bore', lineBore, mm(7.94), { label: 'Bore of the line between the rails' })
export const linkLength = field('fuel.link.length', lineLength, 0.6, { label: 'Length of rail and line to the last injector' })
export const linkFittings = field('fuel.link.fittings', fittingLoss, 4, { label: 'Loss coefficients of fittings between the rails, summed' })
export const returnBore = field('fuel.return.bore', lineBore, mm(7.94), { label: 'Bore of the return' })
export const returnLength = field('fuel.return.length', lineLength, 4, { label: 'Length of the return' })
export const returnFittings = field('fuel.return.fittings', fittingLoss, 5, { label: 'Loss coefficients of fittings in the return, summed' })
export const railBore = field('fuel.rail.bore', lineBore, mm(12), { label: 'Bore of the rails' })
export const railSpacing = field('fuel.rail.spacing', lineLength, mm(170), { label: 'Distance between injectors in a rail' })
export const roughness = field('fuel.lineRoughness', wallRoughness, um(1.5))
export const layout = field('fuel.railLayout', railLayout, 'series')

export const pumpRatedFlow = field('fuel.pump.ratedFlow', pumpFlow, lPerH(340), { at: 'fuel.pump.ratedPressure', label: 'Flow of one pump at its first rated pressure' })
export const pumpRatedPressure = field('fuel.pump.ratedPressure', pumpPressure, bar(3), { label: 'First rated pressure of the pump' })
export const pumpSecondFlow = field('fuel.pump.secondFlow', pumpFlow, lPerH(255), { at: 'fuel.pump.secondPressure', label: 'Flow of one pump at a second, higher pressure' })
export const pumpSecondPressure = field('fuel.pump.secondPressure', pumpPressure, bar(6), { label: 'Second rated pressure of the pump' })
export const pumpRatedVoltage = field('fuel.pump.ratedVoltage', pumpVoltage, 13.5, { label: 'Voltage at which the pump is rated' })
export const pumpVoltageExponent = field('fuel.pump.voltageExponent', voltageExponent, 1.3)
export const pumpNumber = field('fuel.pump.number', pumps, 1)
export const pumpWiringDrop = field('fuel.pump.wiringDrop', wiringDrop, 0.5, { label: 'Voltage lost between battery and pump' })

export const coil = field('fuel.driver.coilResistance', coilResistance, 12, { label: 'Coil resistance of the lowest injector' })
export const ballast = field('fuel.driver.seriesResistance', seriesResistance, 0.1, { label: 'Harness and ballast resistance per injector' })
export const perDriver = field('fuel.driver.injectors', injectorsPerDriver, 1)
export const driverRating = field('fuel.driver.rating', driverCurrent, null, { label: 'Current one driver may carry' })

export const heldRailPressure = field('fuel.heldPressure', railPressure, null, { label: 'Rail pressure left ten minutes after a hot stop' })
export const tank = field('fuel.tank.volume', tankVolume, litre(60), { label: 'Tank volume' })
export const tankUnusable = field('fuel.tank.unusable', tankVolume, litre(8), { label: 'Fuel the pick-up cannot reach when cornering' })
export const sessionMinutes = field('fuel.sessionMinutes', sessionTime, minutes(20))
export const sessionShare = field('fuel.sessionShare', flowShare, percent(45), { label: 'Mean fuel flow of a session over the greatest' })
export const premix = field('fuel.premix.share', premixShare, percent(0.5), { label: 'Premix: oil share of the fuel by volume' })
export const premixDensity = field('fuel.premix.density', premixOilDensity, 870, { label: 'Density of the premix oil' })
export const premixHeat = field('fuel.premix.heatingValue', heatingValue, 42.5e6, { label: 'Lower heating value of the premix oil' })
