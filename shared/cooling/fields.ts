import { field } from '../build/field.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { bar, degC, kmh, kW, litre, lPerMin, percent, rpm } from '../quantity/si.ts'
import { airSideShare, bayConductanceOf, capPressureOf, carSpeedOf, chargeCoolerConductance, coolantFlowOf, coolantTemperatureOf, coolantVolumeOf, coreAir, coreAirTemperatureOf, coreDropOf, coreExponentOf, coverageOf, fanFlow, fanPressureOf, flowExponent, glycolVolume, heatBand, heatFlow, heatShareOf, metalConductanceOf, railConductanceOf, ramRecoveryOf, stillShareOf, storedPerKelvin, sustainedShareOf, warmedMass } from './quantities.ts'

export const coolantShare = field('cooling.coolantShare', heatShareOf, percent(20), { label: 'Share of the released heat that the coolant takes' })
export const oilShare = field('cooling.oilShare', heatShareOf, percent(8), { label: 'Share of the released heat that the oil takes' })
export const surfaceShare = field('cooling.surfaceShare', heatShareOf, percent(3), { label: 'Share of the released heat lost from surfaces' })
export const exhaustBand = field('cooling.exhaustBand', heatBand, percent(2), { label: 'Half the band of the exhaust heat, as a share of fuel energy' })
export const sustainedShare = field('cooling.sustainedShare', sustainedShareOf, percent(45), { label: 'Full-load heat that a lap or a climb sustains' })
export const carSpeed = field('cooling.carSpeed', carSpeedOf, kmh(120), { label: 'Car speed at which cooling is judged' })

export const glycol = field('cooling.glycol', glycolVolume, percent(50))
export const capPressure = field('cooling.capPressure', capPressureOf, bar(1.1))
export const coolantLimit = field('cooling.coolantLimit', coolantTemperatureOf, degC(110), { label: 'Highest coolant temperature you accept' })
export const pumpFlow = field('cooling.pump.ratedFlow', coolantFlowOf, lPerMin(180), { label: 'Flow of the coolant pump, thermostat open' })
export const pumpSpeed = field('cooling.pump.ratedSpeed', shaftSpeed, rpm(6000), { label: 'Shaft speed of that flow' })
export const thermostatOpens = field('cooling.thermostat.opens', coolantTemperatureOf, degC(82), { label: 'Thermostat begins to open' })
export const thermostatOpen = field('cooling.thermostat.fullyOpen', coolantTemperatureOf, degC(95), { label: 'Thermostat fully open' })

export const radiatorHeat = field('cooling.radiator.ratedHeat', heatFlow, kW(75), { label: 'Rated heat of the radiator' })
export const radiatorCoolantTemperature = field('cooling.radiator.ratedCoolantTemperature', coolantTemperatureOf, degC(95), { label: 'Coolant inlet of that rating' })
export const radiatorAirTemperature = field('cooling.radiator.ratedAirTemperature', coreAirTemperatureOf, degC(35), { label: 'Air inlet of that rating' })
export const radiatorAirFlow = field('cooling.radiator.ratedAirFlow', coreAir, 2, { label: 'Air flow of that rating' })
export const radiatorCoolantFlow = field('cooling.radiator.ratedCoolantFlow', coolantFlowOf, lPerMin(120), { label: 'Coolant flow of that rating' })
export const radiatorAirShare = field('cooling.radiator.airSideShare', airSideShare, percent(80), { label: 'Share of the radiator’s resistance on the air side' })
export const airExponent = field('cooling.radiator.airExponent', flowExponent, 0.6, { label: 'Air-side flow exponent' })
export const coolantExponent = field('cooling.radiator.coolantExponent', flowExponent, 0.8, { label: 'Coolant-side flow exponent' })

export const coreDrop = field('cooling.core.ratedDrop', coreDropOf, 220, { label: 'Pressure lost in the radiator at its rated air flow' })
export const frontDrop = field('cooling.core.frontDrop', coreDropOf, 100, { label: 'Pressure lost in the charge cooler at that air flow' })
export const coreExponent = field('cooling.core.exponent', coreExponentOf, 1.7)
export const coverage = field('cooling.core.coverage', coverageOf, 1)
export const ramRecovery = field('cooling.ramRecovery', ramRecoveryOf, percent(40))
export const fanShutOff = field('cooling.fan.shutOffPressure', fanPressureOf, 180, { label: 'Pressure of the fan against a closed core' })
export const fanFreeFlow = field('cooling.fan.freeFlow', fanFlow, 0.9, { label: 'Free flow of the fan' })

export const coolantVolume = field('cooling.coolantVolume', coolantVolumeOf, litre(9))
export const aluminiumMass = field('cooling.aluminiumMass', warmedMass, 25, { label: 'Aluminium of the engine that warms with the coolant' })
export const ironMass = field('cooling.ironMass', warmedMass, 55, { label: 'Iron of the engine that warms with the coolant' })
export const metalConductance = field('cooling.metalConductance', metalConductanceOf, 4000, { label: 'Conductance from metal to coolant at the pump’s stated flow' })
export const stillShare = field('cooling.stillShare', stillShareOf, percent(10))
export const bayConductance = field('cooling.bayConductance', bayConductanceOf, 15, { label: 'Conductance from the standing engine to the air around it' })
export const chargeCoolerMass = field('cooling.chargeCooler.mass', warmedMass, 8, { label: 'Mass of the charge cooler’s core, aluminium' })
export const chargeCoolerAir = field('cooling.chargeCooler.airConductance', chargeCoolerConductance, 1500, { label: 'Conductance from charge cooler to air at the radiator’s rated air flow' })
export const railConductance = field('cooling.rail.conductance', railConductanceOf, 0.8, { label: 'Conductance from the engine into the fuel rail' })
export const railCapacity = field('cooling.rail.capacity', storedPerKelvin, 1500, { label: 'Heat capacity of the rail and the fuel in it' })
