import { quantity } from '../quantity/quantity.ts'
import { bar, cm3, degC, kPa, kW, percent, rpm } from '../quantity/si.ts'

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
