import { choice, curveOf, mapOf, quantity } from '../quantity/quantity.ts'
import { boostPressure, shaftSpeed } from '../engine/quantities.ts'
import { cm2, deg, degC, kPa, kW, mm, percent, rpm } from '../quantity/si.ts'

export const pressureRatio = quantity('Pressure ratio', 'π', 'number', [1, 4.5], 0.03)
export const expansionRatio = quantity('Expansion ratio', 'π_t', 'number', [1, 5], 0.05)
export const gasPressure = quantity('Gas pressure', 'p', 'pressure', [kPa(50), kPa(600)], kPa(2))
export const gasTemperature = quantity('Gas temperature', 'T', 'temperature', [degC(-30), degC(300)], 3)
export const turbineInletTemperature = quantity('Turbine inlet temperature', 'T_3', 'temperature', [degC(300), degC(1150)], 25)
export const gasDensity = quantity('Gas density', 'ρ', 'density', [0.15, 6], 0.02)
export const gasFlow = quantity('Gas mass flow', 'm', 'massFlow', [0.002, 1.5], 0.005, { show: ['g/s', 'lb/min'] })
export const correctedFlow = quantity('Corrected mass flow', 'm_c', 'massFlow', [0.005, 0.8], 0.005, { show: ['g/s', 'lb/min'] })
export const turboSpeed = quantity('Turbocharger speed', 'n_t', 'shaftSpeed', [rpm(2000), rpm(250000)], rpm(1000))
export const correctedSpeed = quantity('Corrected turbocharger speed', 'n_c', 'shaftSpeed', [rpm(2000), rpm(250000)], rpm(1000))
export const compressorEfficiency = quantity('Compressor efficiency', 'η_c', 'share', [0.3, 0.85], percent(2))
export const turbineEfficiency = quantity('Turbine efficiency', 'η_t', 'share', [0.3, 0.85], percent(3))
export const mechanicalEfficiency = quantity('Mechanical efficiency of the turbocharger', 'η_m', 'share', [0.85, 1], percent(1))
export const turboPower = quantity('Power on the turbocharger shaft', 'P_t', 'power', [kW(0.05), kW(200)], kW(0.5))
export const turboCount = quantity('Number of turbochargers side by side', 'z_t', 'number', [1, 2], 1, { whole: true })
export const compressorMap = mapOf('Compressor map')
export const outsideMap = quantity('Where outside the map', 'o', 'number', [0, 3], 1, { whole: true })
export const estimatedOnMap = quantity('Below the lowest speed line', 'b', 'number', [0, 1], 1, { whole: true })
export const speedOverLowestLine = quantity('Speed over that of the lowest line', 'n_c/n_l', 'share', [0.05, 4], percent(3))
export const flowMargin = quantity('Flow margin on the map', 'S', 'share', [-0.9, 5], percent(3))
export const speedShare = quantity('Turbocharger speed over its limit', 'ν', 'share', [0, 1.5], percent(2))

export const pressureLoss = quantity('Pressure loss', 'Δp_l', 'pressureDifference', [0, kPa(60)], kPa(0.5))
export const lossCoefficient = quantity('Loss coefficient of a passage', 'K', 'lossCoefficient', [1e3, 2e6], 2e3)
export const effectiveness = quantity('Charge cooler effectiveness', 'ε_k', 'share', [0.2, 0.98], percent(2))
export const coolingAir = quantity('Cooling air over the charge cooler', 'm_k', 'massFlow', [0.05, 8], 0.05, { show: ['kg/s', 'lb/s'] })
export const flowCapacity = quantity('Turbine flow capacity', 'm_T', 'massFlow', [0.03, 0.8], 0.005, { show: ['g/s', 'lb/min'] })
export const gasSpecificHeat = quantity('Specific heat of a gas', 'c_p', 'specificHeat', [950, 1400], 15)
export const heatRatio = quantity('Ratio of specific heats', 'γ', 'number', [1.2, 1.41], 0.01)
export const specificGasConstant = quantity('Specific gas constant', 'R', 'specificHeat', [270, 320], 3)
export const throatPressureRatio = quantity('Throat pressure over pressure before', 'p*/p', 'number', [0.4, 0.7], 0.005)
export const bypassShare = quantity('Share of exhaust past the turbine', 'y', 'share', [0, 1], percent(3))

export const boostTarget = curveOf('Boost target over shaft speed', shaftSpeed, boostPressure)
export const valveDiameter = quantity('Wastegate valve diameter', 'd_w', 'length', [mm(12), mm(70)], mm(0.5))
export const valveCount = quantity('Number of wastegates', 'k_w', 'number', [1, 4], 1, { whole: true })
export const dischargeCoefficient = quantity('Discharge coefficient', 'C_d', 'number', [0.4, 1], 0.05)
export const flowArea = quantity('Flow area', 'A', 'area', [cm2(0.2), cm2(60)], cm2(0.2))
export const springPreload = quantity('Actuator spring preload', 'F_0', 'force', [5, 900], 5)
export const springRate = quantity('Actuator spring rate', 'k_s', 'stiffness', [500, 40000], 300)
export const diaphragmArea = quantity('Diaphragm area', 'A_d', 'area', [cm2(4), cm2(60)], cm2(0.3), { show: ['cm²', 'in²'] })
export const rodTravel = quantity('Travel of the actuator rod', 's', 'length', [mm(2), mm(25)], mm(0.3))
export const leverRatio = quantity('Lever ratio of the wastegate', 'i', 'number', [0.3, 3], 0.05)
export const rodForce = quantity('Force on the actuator rod', 'F', 'force', [-500, 2000], 5)
export const actuatorPressure = quantity('Pressure on the actuator', 'p_d', 'gaugePressure', [kPa(-50), kPa(400)], kPa(3))
export const keptShare = quantity('Share of boost taken from opening the wastegate', 'c', 'share', [0, 0.95], percent(3))
export const efficiencyBand = quantity('Half the band of turbine efficiency', 'δη', 'share', [0, 0.2], percent(1))
export const hotMaterial = choice('Material of the hot side', {
  'stainless-304': 'stainless steel, type 304', 'stainless-316': 'stainless steel, type 316', 'stainless-321': 'stainless steel, type 321', 'stainless-347': 'stainless steel, type 347',
  'stainless-309': 'stainless steel, type 309', 'stainless-310': 'stainless steel, type 310', 'ferritic-409': 'stainless steel, type 409', 'ferritic-430': 'stainless steel, type 430',
})

// Ducts and filters.
export const ductBore = quantity('Bore of a duct', 'd', 'length', [mm(20), mm(150)], mm(0.5))
export const ductRun = quantity('Straight length of a duct', 'l', 'length', [0, 12], 0.05, { show: ['m', 'ft'] })
export const bendCount = quantity('Number of bends', 'z_b', 'number', [0, 20], 1, { whole: true })
export const bendAngle = quantity('Angle of a bend', 'θ_b', 'angle', [deg(5), deg(180)], deg(5))
export const bendRadius = quantity('Bend radius over bore', 'r/d', 'number', [0.6, 10], 0.1)
export const bendLoss = quantity('Loss of a bend in velocity heads', 'ζ_b', 'number', [0, 6], 0.05)
export const gasSpeed = quantity('Speed of a gas', 'v', 'speed', [0.05, 400], 1)
export const filterArea = quantity('Area of a filter', 'A_f', 'area', [50e-4, 3], 10e-4, { show: ['cm²', 'in²'] })
export const filterExponent = quantity('Exponent of a filter’s loss', 'n_f', 'number', [1, 2], 0.05)

// Shut throttle.
export const reserveShare = quantity('Share kept in reserve', 'x_r', 'share', [0, 1], percent(5))
export const pipeVolume = quantity('Volume of the boost pipes', 'V_b', 'volume', [0.5e-3, 60e-3], 0.5e-3, { show: ['L', 'in³'] })
export const shortTime = quantity('Time until surge', 't_s', 'time', [0, 0.5], 5e-3)

// Hot metal.
export const metalTemperature = quantity('Temperature of a metal', 'T_m', 'temperature', [degC(20), degC(1050)], 25)
export const coldTemperature = quantity('Temperature when fitted', 'T_c', 'temperature', [degC(-20), degC(50)], 5)
export const hotExpansion = quantity('Mean expansion of a hot metal', 'α_h', 'expansion', [8e-6, 25e-6], 0.5e-6)
export const hotLength = quantity('Length of a hot part', 'l_h', 'length', [mm(10), mm(1500)], mm(1))
export const hotGrowth = quantity('Growth of a hot part', 'Δl', 'length', [mm(-5), mm(30)], mm(0.1))

// Response.
export const turboInertia = quantity('Inertia of a turbocharger’s shaft and wheels', 'J_t', 'inertia', [2e-6, 8e-4], 5e-6, { show: ['kg mm²', 'lb in²'] })
export const responseTime = quantity('Time to boost', 't_b', 'time', [0.02, 20], 0.05, { show: ['s', 's'] })
export const boostShare = quantity('Share of a boost', 'x_b', 'share', [0.1, 1], percent(5))

// A compressor by its wheel.
export const inducer = quantity('Inducer diameter', 'D_1', 'length', [mm(25), mm(110)], mm(0.3))
export const exducer = quantity('Exducer diameter', 'D_2', 'length', [mm(35), mm(150)], mm(0.3))
export const trim = quantity('Trim', 'T_r', 'number', [35, 80], 1)
export const tipSpeed = quantity('Tip speed of the wheel', 'u_2', 'speed', [50, 620], 5)
export const tipMach = quantity('Tip Mach number', 'M_u', 'number', [0.1, 1.8], 0.02)
export const throatShare = quantity('Share of the inducer’s face that is throat', 'k_t', 'share', [0.35, 0.7], percent(4))
export const linePlace = quantity('Place along a speed line', 's', 'share', [0, 1], percent(2))
