import { field } from '../build/field.ts'
import { bar, cm3, degC, kW, litre, lPerMin, mm, percent, rpm, um } from '../quantity/si.ts'
import { airSideShare, coreAir, flowExponent, warmedMass } from '../cooling/quantities.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import {
  bearingLength, combustionRise, coolerDifference, diametralClearance, dilution, dischargeCoefficient, filmRatio, highShearViscosity,
  jetDiameter, jets, journalDiameter, mainOffset, mainSpacing, meteredPerTurn, oilDensity, oilCoolerHeat, oilFlow, oilGrade,
  oilHole, oilPressure, oilPumpPerTurn, oilTemperature, oilVolume, peakGasPressure, pumpEfficiency, pumpSpeedRatio, sealDose, sealOiling,
  surfaceRoughness, viscosityAt100, viscosityAt40, viscosityIndex,
} from './quantities.ts'

export const grade = field('oil.grade', oilGrade, '10W-40')
export const viscosity40 = field('oil.viscosity40', viscosityAt40, null)
export const viscosity100 = field('oil.viscosity100', viscosityAt100, null)
export const highShear = field('oil.highShear', highShearViscosity, null)
export const index = field('oil.viscosityIndex', viscosityIndex, 150)
export const density15 = field('oil.density', oilDensity, 865, { label: 'Oil density at 15 °C' })
export const fuelInOil = field('oil.dilution', dilution, percent(2))

export const rotorDiameter = field('oil.rotorBearing.diameter', journalDiameter, mm(72), { label: 'Rotor journal diameter' })
export const rotorLength = field('oil.rotorBearing.length', bearingLength, mm(60), { label: 'Rotor bearing length' })
export const rotorClearance = field('oil.rotorBearing.clearance', diametralClearance, mm(0.06), { label: 'Rotor bearing clearance, diametral' })
export const rotorHole = field('oil.rotorBearing.hole', oilHole, mm(6), { label: 'Oil hole of the rotor journal' })
export const journalRoughness = field('oil.journalRoughness', surfaceRoughness, um(0.2), { label: 'Journal roughness (Rq)' })
export const shellRoughness = field('oil.shellRoughness', surfaceRoughness, um(0.4), { label: 'Bearing shell roughness (Rq)' })
export const filmRatioWanted = field('oil.filmRatioWanted', filmRatio, 3, { label: 'Film over roughness wanted' })
export const peakPressure = field('oil.peakGasPressure', peakGasPressure, null, { label: 'Peak chamber pressure, measured' })
export const pressureRise = field('oil.combustionRise', combustionRise, 2)

export const mainDiameter = field('oil.mainBearing.diameter', journalDiameter, mm(46), { label: 'Main journal diameter' })
export const mainLength = field('oil.mainBearing.length', bearingLength, mm(55), { label: 'Main bearing length' })
export const mainClearance = field('oil.mainBearing.clearance', diametralClearance, mm(0.05), { label: 'Main bearing clearance, diametral' })
export const spacing = field('oil.mainBearing.spacing', mainSpacing, null)
export const offset = field('oil.mainBearing.offset', mainOffset, null)

export const pumpPerTurn = field('oil.pump.perTurn', oilPumpPerTurn, cm3(11))
export const pumpRatio = field('oil.pump.speedRatio', pumpSpeedRatio, 1)
export const pumpShare = field('oil.pump.efficiency', pumpEfficiency, percent(88))
export const pumpRatedPressure = field('oil.pump.ratedPressure', oilPressure, bar(5), { label: 'Pressure at which the pump’s efficiency holds' })
export const pumpRatedSpeed = field('oil.pump.ratedSpeed', shaftSpeed, rpm(4000), { label: 'Shaft speed at which the pump’s efficiency holds' })
export const relief = field('oil.relief', oilPressure, bar(5.5), { label: 'Relief valve setting' })
export const rotorJets = field('oil.jets.count', jets, 4)
export const rotorJet = field('oil.jets.diameter', jetDiameter, mm(1.5), { label: 'Rotor cooling jet diameter' })
export const turboFeed = field('oil.turboFeed.diameter', jetDiameter, mm(1.2), { label: 'Turbocharger oil restrictor' })
export const jetCoefficient = field('oil.jets.coefficient', dischargeCoefficient, 0.75)
export const hotPressure = field('oil.hotPressure', oilPressure, null, { label: 'Hot oil pressure, as read' })
export const hotPressureSpeed = field('oil.hotPressureSpeed', shaftSpeed, rpm(3000), { label: 'Shaft speed of that reading' })
export const hotPressureTemperature = field('oil.hotPressureTemperature', oilTemperature, degC(95), { label: 'Oil temperature at that reading' })

export const sealsBy = field('oil.sealOiling', sealOiling, 'both')
export const meteredIdle = field('oil.metering.idle', meteredPerTurn, 0.4e-9, { label: 'Metering pump delivery, lever at rest' })
export const meteredFull = field('oil.metering.full', meteredPerTurn, 1.4e-9, { label: 'Metering pump delivery, lever full' })
export const referenceDose = field('oil.referenceDose', sealDose, 1e-6, { label: 'Reference dose of the seals, chosen' })

export const coolerRatedHeat = field('oil.cooler.ratedHeat', oilCoolerHeat, kW(28), { label: 'Heat of the oil cooler at its rated point' })
export const coolerRatedDifference = field('oil.cooler.ratedDifference', coolerDifference, 80, { label: 'Oil in less air in, rated' })
export const coolerRatedOil = field('oil.cooler.ratedOilFlow', oilFlow, lPerMin(60), { label: 'Oil flow, rated' })
export const coolerRatedAir = field('oil.cooler.ratedAirFlow', coreAir, 0.8, { label: 'Air flow, rated' })
export const coolerAir = field('oil.cooler.airFlow', coreAir, 0.8, { label: 'Air flow through the oil cooler on the road, at sea level' })
export const coolerAirSide = field('oil.cooler.airSideShare', airSideShare, percent(50), { label: 'Share of the oil cooler’s resistance on the air side' })
export const coolerAirExponent = field('oil.cooler.airExponent', flowExponent, 0.6, { label: 'Air-side flow exponent of the oil cooler' })
export const coolerOilExponent = field('oil.cooler.oilExponent', flowExponent, 0.4, { label: 'Oil-side flow exponent of the oil cooler' })
export const thermostat = field('oil.cooler.thermostat', oilTemperature, degC(80), { label: 'Oil thermostat opens' })
export const volume = field('oil.volume', oilVolume, litre(5), { label: 'Oil in the engine, cooler and lines' })
export const oilMetal = field('oil.metalMass', warmedMass, 20, { label: 'Iron that warms with the oil: rotors, shaft, sump' })
export const temperatureLimit = field('oil.temperatureLimit', oilTemperature, degC(110), { label: 'Highest oil temperature you accept' })
