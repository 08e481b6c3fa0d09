import { choice, curveOf, quantity } from '../quantity/quantity.ts'
import { bar, cm3, deg, degC, gPerKWh, kPa, kW, mm, percent, rpm } from '../quantity/si.ts'

export const shaftSpeed = quantity('Shaft speed', 'n', 'shaftSpeed', [rpm(500), rpm(11000)], rpm(20))
export const rotors = quantity('Number of rotors', 'z', 'number', [1, 4], 1, { whole: true })
export const displacement = quantity('Displacement of one chamber', 'V_h', 'volume', [cm3(100), cm3(1500)], cm3(1))
export const compressionRatio = quantity('Compression ratio', 'ε', 'number', [6, 14], 0.1)
export const manifoldPressure = quantity('Manifold pressure', 'p_m', 'pressure', [kPa(20), kPa(400)], kPa(2))
export const chargeTemperature = quantity('Charge temperature', 'T_m', 'temperature', [degC(-20), degC(150)], 3)
export const airFlow = quantity('Air mass flow', 'm_a', 'massFlow', [0.002, 1.2], 0.005, { show: ['g/s', 'lb/min'] })
export const volumetricEfficiency = quantity('Volumetric efficiency', 'η_v', 'share', [0.3, 1.3], percent(3))
export const lambda = quantity('Air-fuel equivalence ratio', 'λ', 'number', [0.65, 1.3], 0.02)
export const power = quantity('Brake power', 'P_e', 'power', [kW(1), kW(900)], kW(5), { show: ['kW', 'hp'] })
export const torque = quantity('Torque', 'M', 'torque', [5, 1500], 5)
export const airPressure = quantity('Air pressure outside', 'p_0', 'pressure', [kPa(55), kPa(108)], kPa(0.5))
export const airTemperature = quantity('Air temperature outside', 'T_0', 'temperature', [degC(-30), degC(50)], 2)
export const humidity = quantity('Relative humidity', 'φ', 'share', [0, 1], percent(5))
export const boostPressure = quantity('Boost pressure', 'p_b', 'gaugePressure', [bar(-0.9), bar(3)], bar(0.03))

// How the engine is described.
export const describedBy = choice('Engine described by', { geometry: 'its housing and rotor', displacement: 'its displacement' })
export const generatingRadius = quantity('Generating radius', 'R', 'length', [mm(70), mm(160)], mm(0.05))
export const eccentricity = quantity('Eccentricity', 'e', 'length', [mm(8), mm(20)], mm(0.02))
export const housingWidth = quantity('Width of the rotor housing', 'b', 'length', [mm(40), mm(130)], mm(0.05))
export const parallelShift = quantity('Parallel shift of the trochoid', 'a', 'length', [0, mm(6)], mm(0.1))
export const shaftAngle = quantity('Shaft angle after smallest volume', 'θ', 'angle', [0, deg(540)], deg(1))
export const chamberVolume = quantity('Chamber volume', 'V', 'volume', [cm3(10), cm3(1800)], cm3(1))
export const minimumVolume = quantity('Theoretical minimum volume', 'V_min', 'volume', [cm3(5), cm3(200)], cm3(0.5))
export const theoreticalRatio = quantity('Theoretical compression ratio', 'ε_th', 'number', [10, 40], 0.1)
export const leaningAngle = quantity('Largest leaning angle of the apex seal', 'φ_max', 'angle', [deg(10), deg(45)], deg(0.1))
export const recessVolume = quantity('Volume of one rotor recess', 'V_r', 'volume', [cm3(1), cm3(200)], cm3(0.5))
export const flankGap = quantity('Gap between rotor flank and housing', 'c_f', 'length', [0, mm(1.5)], mm(0.05))
export const plugVolume = quantity('Volume of the plug holes of one chamber', 'V_p', 'volume', [0, cm3(10)], cm3(0.2))
export const arcLength = quantity('Arc length', 'L', 'length', [mm(50), mm(500)], mm(0.1))
export const quotedDisplacement = quantity('Displacement as quoted', 'V_q', 'volume', [cm3(100), cm3(12000)], cm3(5), { show: ['cm³', 'in³'] })

// Speed and load.
export const sealSpeed = quantity('Sliding speed of the apex seal', 'v_s', 'speed', [1, 70], 0.1)
export const rotorMass = quantity('Mass of one rotor', 'm_r', 'mass', [1, 9], 0.01)
export const rotorLoad = quantity('Centrifugal load of one rotor', 'F_r', 'force', [10, 1.2e5], 50)
export const meanPressure = quantity('Mean effective pressure', 'p_me', 'pressureDifference', [bar(-2), bar(30)], bar(0.2), { show: ['bar', 'psi'] })
export const frictionConstant = quantity('Friction mean pressure towards standstill', 'p_f0', 'pressureDifference', [kPa(10), kPa(200)], kPa(10))
export const frictionSlope = quantity('Friction rise per 1,000 rpm', 'p_f1', 'pressureDifference', [0, kPa(60)], kPa(3))
export const exhaustPressure = quantity('Pressure at the exhaust ports', 'p_x', 'pressure', [kPa(60), kPa(700)], kPa(3))
export const backPressureRatio = quantity('Back-pressure ratio', 'r_x', 'number', [0.5, 4], 0.05)
export const overlapFactor = quantity('Overlap factor', 'k_x', 'number', [0, 0.6], 0.05)

// Fuel into power.
export const fuelPowerIn = quantity('Chemical power of the fuel', 'P_f', 'power', [kW(2), kW(3000)], kW(5), { show: ['kW', 'hp'] })
export const releasedShareOf = quantity('Share of the heating value released', 'x_r', 'share', [0.5, 1], percent(1))
export const airStandardEfficiency = quantity('Air-standard efficiency', 'η_th', 'share', [0.3, 0.75], percent(1))
export const indicatedQuality = quantity('Indicated quality', 'q_i', 'share', [0.3, 0.95], percent(2))
export const indicated = quantity('Indicated power', 'P_i', 'power', [kW(1), kW(1100)], kW(5), { show: ['kW', 'hp'] })
export const lostPower = quantity('Power lost inside the engine', 'P_l', 'power', [kW(-100), kW(250)], kW(1), { show: ['kW', 'hp'] })
export const specificConsumption = quantity('Brake specific fuel consumption', 'b_e', 'specificFuel', [gPerKWh(180), gPerKWh(1200)], gPerKWh(5))
export const endPressure = quantity('Pressure at the end of compression', 'p_2', 'pressure', [kPa(200), kPa(12000)], kPa(20), { show: ['bar abs', 'psi abs'] })
export const endTemperature = quantity('Temperature at the end of compression', 'T_2', 'temperature', [degC(100), degC(900)], 5)
export const powerCorrection = quantity('Power correction factor', 'α_c', 'number', [0.8, 1.6], 0.005)

// Intake tuning.
export const tunedFrequency = quantity('Tuned frequency', 'f', 'frequency', [5, 1000], 1)
export const ductLength = quantity('Length of a duct', 'l', 'length', [mm(20), mm(3000)], mm(2))
export const ductArea = quantity('Flow area of a duct', 'A', 'area', [0.2e-4, 100e-4], 0.1e-4)
export const tuningFactor = quantity('Tuning factor', 'K_t', 'number', [1.5, 3], 0.1)
export const resonatorVolume = quantity('Volume that resonates', 'V_res', 'volume', [cm3(50), cm3(10000)], cm3(5))

export const compressionExponent = quantity('Exponent of compression', 'n_c', 'number', [1.2, 1.4], 0.02)

// Curves.
export const veCurve = curveOf('Volumetric efficiency over shaft speed', shaftSpeed, volumetricEfficiency)
export const lambdaCurve = curveOf('Lambda over manifold pressure', manifoldPressure, lambda)

// The seal's way, and the rotors' pull.
export const sealPathPerTurn = quantity('Path of an apex seal in a shaft turn', 's_1', 'length', [mm(100), mm(500)], mm(0.1))
export const sealPathOverRoad = quantity('Seal path over road', 's_s/s', 'number', [0.05, 4], 0.005)
export const drivenDistance = quantity('Distance driven', 's', 'distance', [100, 1e9], 100)
export const timesWeight = quantity('Load in weights of the part', 'F/G', 'number', [1, 3000], 10)
export const rotorSpacing = quantity('Distance between the middles of two rotors', 'l_r', 'length', [mm(60), mm(250)], mm(0.5))
export const rotorCouple = quantity('Couple of two opposed rotors', 'M_r', 'torque', [1, 2e4], 20)

// Ports.
export const portAngle = quantity('Shaft angle of a port', 'θ_p', 'angle', [deg(-150), deg(650)], deg(1))
export const apexAngle = quantity('Rotor angle of an apex from the long axis', 'α', 'angle', [deg(-50), deg(420)], deg(0.5))
export const rampAngle = quantity('Angle in which a port opens', 'δ', 'angle', [deg(5), deg(200)], deg(2))
export const portWidth = quantity('Width of a port, across the edge that opens it', 'w_p', 'length', [mm(8), mm(80)], mm(0.3))
export const portHeight = quantity('Height of a port, along the way of that edge', 'h_p', 'length', [mm(8), mm(90)], mm(0.3))
export const portArea = quantity('Open area of a port', 'A_p', 'area', [0, 50e-4], 0.1e-4)
export const timeArea = quantity('Time-area', 'A_t', 'timeArea', [1e-7, 2e-3], 1e-7)
export const portSpeed = quantity('Mean gas speed in a port', 'v_p', 'speed', [2, 400], 2)

// Filling and its sensor.
export const fillingShare = quantity('Share of filling lost', 'x_v', 'share', [-0.5, 0.8], percent(1))
export const countsOfReading = quantity('Steps of the controller’s converter', 'N_c', 'number', [256, 65536], 1, { whole: true })
export const overshootShare = quantity('Overshoot of boost', 'x_os', 'share', [0, 1], percent(3))
export const readingStep = quantity('Step of a pressure reading', 'δp', 'pressureDifference', [1, kPa(5)], 10)
export const readingRoom = quantity('Room above the highest pressure', 'Δp_r', 'pressureDifference', [kPa(-300), kPa(500)], kPa(2))

// Throttle.
export const throttleBore = quantity('Bore of the throttle', 'D_t', 'length', [mm(35), mm(120)], mm(0.5))
export const throttleShaft = quantity('Diameter of the throttle shaft', 'd_t', 'length', [mm(4), mm(20)], mm(0.2))
export const plateAngle = quantity('Angle of the throttle plate', 'ψ', 'angle', [0, deg(90)], deg(0.5))
export const throttlePosition = quantity('Throttle position', 'x_t', 'share', [percent(2), 1], percent(1))
export const areaShare = quantity('Share of the bore that is free', 'A/A_0', 'share', [0, 1], percent(1))

// Measured when the engine is put together and first turned.
export const sealClearance = quantity('Clearance of a seal', 'c_s', 'length', [mm(0.01), mm(0.5)], mm(0.01), { show: ['mm', 'in'] })
export const endFloat = quantity('End float of the shaft', 'c_e', 'length', [mm(0.01), mm(0.3)], mm(0.01), { show: ['mm', 'in'] })
export const facePressure = quantity('Compression of one face', 'p_k', 'gaugePressure', [bar(2), bar(14)], bar(0.1))
export const crankingSpeed = quantity('Cranking speed', 'n_k', 'shaftSpeed', [rpm(120), rpm(450)], rpm(5))
