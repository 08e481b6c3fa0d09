import { choice, quantity } from '../quantity/quantity.ts'
import { bar, degC, kmh, kPa, kW, lPerMin, minutes, mm, percent } from '../quantity/si.ts'

// Where the fuel's energy goes.
export const heatFlow = quantity('Heat flow', 'Q', 'power', [100, kW(1500)], kW(3), { show: ['kW', 'kW'] })
export const coolantHeatOf = quantity('Heat to the coolant', 'Q_c', 'power', [kW(0.5), kW(250)], kW(3), { show: ['kW', 'kW'] })
export const heatShareOf = quantity('Share of the released heat', 'x_q', 'share', [percent(0.5), percent(45)], percent(2))
export const heatBand = quantity('Band of the exhaust heat', 'β_x', 'share', [0, percent(10)], percent(0.5))
export const massFlowOf = quantity('Mass flow of exhaust', 'm_x', 'massFlow', [0.002, 1.3], 0.005, { show: ['g/s', 'lb/min'] })
export const sustainedShareOf = quantity('Sustained share of full load', 'x_s', 'share', [percent(5), 1], percent(5))

export const shareOfFuelOf = quantity('Share of the fuel’s energy', 'y', 'share', [percent(-5), 1], percent(1))
export const balanceGapOf = quantity('What the heat balance does not account for', 'Q_δ', 'power', [-kW(500), kW(500)], 100, { show: ['W', 'W'], whole: true })

// Coolant.
export const coolantTemperatureOf = quantity('Coolant temperature', 'T_c', 'temperature', [degC(-20), degC(140)], 2)
export const glycolVolume = quantity('Glycol share by volume', 'φ_g', 'share', [0, percent(60)], percent(2))
export const glycolMass = quantity('Glycol share by mass', 'w_g', 'share', [0, percent(63)], percent(2))
export const waterMole = quantity('Mole share of water', 'x_w', 'share', [0.55, 1], percent(1))
export const coolantDensityOf = quantity('Coolant density', 'ρ_c', 'density', [930, 1120], 2)
export const coolantHeatCapacity = quantity('Specific heat of the coolant', 'c_c', 'specificHeat', [2700, 4250], 20)
export const coolantConductivityOf = quantity('Conductivity of the coolant', 'k_c', 'conductivity', [0.3, 0.7], 0.005)
export const coolantViscosityOf = quantity('Viscosity of the coolant', 'μ_c', 'dynamicViscosity', [2e-4, 0.1], 2e-5)
export const freezingPointOf = quantity('Freezing point of the coolant', 'T_f', 'temperature', [degC(-50), degC(0)], 1)
export const boilingPointOf = quantity('Boiling point of the coolant', 'T_b', 'temperature', [degC(80), degC(150)], 1)
export const waterPressure = quantity('Saturation pressure of boiling water', 'p_w', 'pressure', [611.213, 22.064e6], 100)
export const waterTemperature = quantity('Temperature of boiling water', 'T_w', 'temperature', [273.15, 647.096], 0.1)
export const capPressureOf = quantity('Pressure of the radiator cap', 'p_cap', 'gaugePressure', [0, bar(2.5)], bar(0.1))
export const systemPressure = quantity('Pressure in the cooling system', 'p_s', 'pressure', [kPa(50), kPa(350)], kPa(5))
export const boilMarginOf = quantity('Boil margin', 'ΔT_b', 'temperatureDifference', [-60, 100], 1)
export const coolantFlowOf = quantity('Coolant flow', 'V_c', 'volumeFlow', [lPerMin(5), lPerMin(500)], lPerMin(5), { show: ['L/min', 'US gal/min'] })
export const thermostatOpening = quantity('Opening of the thermostat', 'x_t', 'share', [0, 1], percent(5))

// Coolers.
export const capacityRateOf = quantity('Heat capacity rate', 'C', 'conductance', [20, 25000], 20)
export const capacityRatioOf = quantity('Capacity ratio', 'C_r', 'number', [0, 1], 0.02)
export const transferUnitsOf = quantity('Number of transfer units', 'NTU', 'number', [0.02, 10], 0.05)
export const effectivenessValue = quantity('Effectiveness', 'ε', 'share', [percent(1), 1], percent(2))
export const arrangement = choice('Arrangement of the streams', {
  crossUnmixed: 'cross flow, both streams in channels', counter: 'counter flow', parallel: 'parallel flow',
  weakerMixed: 'cross flow, weaker stream mixed', strongerMixed: 'cross flow, stronger stream mixed',
})
export const coolerConductance = quantity('Conductance of a cooler', 'UA', 'conductance', [10, 20000], 50)
export const inletDifferenceOf = quantity('Difference between the two inlets', 'ΔT_i', 'temperatureDifference', [1, 400], 1)
export const endDifference = quantity('Difference at one end', 'ΔT_e', 'temperatureDifference', [0.5, 300], 1)
export const meanDifferenceOf = quantity('Logarithmic mean difference', 'ΔT_m', 'temperatureDifference', [0.5, 300], 1)
export const airSideShare = quantity('Share of the resistance on the air side', 'x_a', 'share', [percent(20), percent(99)], percent(5))
export const flowExponent = quantity('Flow exponent of heat transfer', 'm', 'number', [0, 1], 0.05)

// Air through the core.
export const carSpeedOf = quantity('Car speed', 'v', 'speed', [0, kmh(330)], kmh(5), { show: ['km/h', 'mph'] })
export const ramRecoveryOf = quantity('Ram recovery', 'η_r', 'share', [0, percent(95)], percent(5))
export const ramPressureOf = quantity('Ram pressure', 'Δp_r', 'pressureDifference', [0, 5000], 20, { show: ['Pa', 'inH₂O'] })
export const coreDropOf = quantity('Pressure lost in the core', 'Δp_k', 'pressureDifference', [10, 3000], 20, { show: ['Pa', 'inH₂O'] })
export const coreExponentOf = quantity('Exponent of the core’s resistance', 'a', 'number', [1, 2], 0.05)
export const fanPressureOf = quantity('Pressure of the fan', 'Δp_f', 'pressureDifference', [0, 1500], 10, { show: ['Pa', 'inH₂O'] })
export const fanFlow = quantity('Air flow of the fan', 'V_f', 'volumeFlow', [0, 6], 0.05, { show: ['m³/s', 'ft³/min'] })
export const coreAir = quantity('Air flow through the core', 'm_k', 'massFlow', [0.05, 8], 0.05, { show: ['kg/s', 'lb/s'] })
export const coreAirTemperatureOf = quantity('Air temperature in front of the radiator', 'T_k', 'temperature', [degC(-30), degC(120)], 2)
export const coverageOf = quantity('Share of the charge cooler in front of the radiator', 'x_f', 'share', [0, 1], percent(10))

// Spacers and surfaces.
export const spacerMaterial = choice('Material of a spacer', { phenolic: 'phenolic resin', epoxy: 'epoxy', polyamide: 'glass-filled polyamide', ptfe: 'PTFE', stainless: 'stainless steel', steel: 'steel', castIron: 'cast iron', aluminium: 'aluminium alloy' })
export const spacerConductivityOf = quantity('Conductivity of a material', 'k', 'conductivity', [0.1, 250], 0.05)
export const spacerThickness = quantity('Thickness of a spacer', 's', 'length', [mm(0.5), mm(50)], mm(0.5))
export const joinedArea = quantity('Area of a joint', 'A_j', 'area', [1e-4, 0.05], 1e-4)
export const boltArea = quantity('Area of all bolts together', 'A_b', 'area', [0, 0.002], 1e-5)
export const contactCoefficient = quantity('Contact conductance of a joint', 'h_j', 'filmCoefficient', [200, 50000], 500)
export const surfaceTemperatureOf = quantity('Surface temperature', 'T_w', 'temperature', [degC(-20), degC(1050)], 5)
export const surfaceArea = quantity('Surface area', 'A_w', 'area', [0.001, 3], 0.01, { show: ['m²', 'in²'] })
export const emissivityOf = quantity('Emissivity', 'ε_w', 'share', [percent(2), 1], percent(5))
export const surfaceFilm = quantity('Heat transfer to still or moving air', 'h_w', 'filmCoefficient', [2, 250], 3)

// What stores heat over a session.
export const coolantVolumeOf = quantity('Coolant volume', 'V_k', 'volume', [0.002, 0.03], 0.0005, { show: ['L', 'US gal'] })
export const warmedMass = quantity('Mass that warms', 'm_w', 'mass', [0.2, 200], 1)
export const storedPerKelvin = quantity('Heat capacity', 'C_s', 'heatCapacity', [50, 400e3], 500, { show: ['kJ/K', 'kJ/K'] })
export const metalTemperatureOf = quantity('Temperature of the metal', 'T_s', 'temperature', [degC(-20), degC(250)], 3)
export const metalConductanceOf = quantity('Conductance from metal to coolant', 'G', 'conductance', [20, 20000], 200)
export const stillShareOf = quantity('Share of conductance left without flow', 'x_n', 'share', [percent(1), percent(60)], percent(5))
export const bayConductanceOf = quantity('Conductance to the air of the bay', 'K_b', 'conductance', [0.1, 100], 2)
export const chargeCoolerConductance = quantity('Conductance from charge cooler to air', 'K_x', 'conductance', [50, 6000], 50)
export const railConductanceOf = quantity('Conductance into the fuel rail', 'K_r', 'conductance', [0.05, 20], 0.1)
export const boilingHeatOf = quantity('Heat of boiling', 'h_v', 'specificEnergy', [1.9e6, 2.6e6], 5e3)
export const boiledMassOf = quantity('Coolant boiled away', 'm_v', 'mass', [0, 5], 0.01, { show: ['kg', 'lb'] })
export const courseTime = quantity('Time in a session', 't', 'time', [0, minutes(180)], 1, { show: ['min', 'min'] })
export const cycleTimeOf = quantity('Length of one lap', 't_l', 'time', [5, 900], 1, { show: ['s', 's'] })
export const loadShareOf = quantity('Part of the lap at full load', 'x_l', 'share', [0, 1], percent(2))
export const closureOf = quantity('Energy that does not close', 'δ_E', 'share', [-1, 1], percent(0.01))
