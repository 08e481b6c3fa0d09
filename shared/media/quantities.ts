import { quantity } from '../quantity/quantity.ts'
import { degC, kPa, percent } from '../quantity/si.ts'

export const airDensity = quantity('Air density', 'ρ', 'density', [0.3, 6], 0.01)
export const vapourPressureOfWater = quantity('Vapour pressure of the air', 'p_v', 'pressure', [0, kPa(40)], kPa(0.05), { show: ['kPa abs', 'inHg abs'] })
export const saturation = quantity('Saturation pressure of water', 'p_s', 'pressure', [kPa(0.03), kPa(300)], kPa(0.02))
export const dryPressure = quantity('Pressure of the dry part of the air', 'p_d', 'pressure', [kPa(10), kPa(400)], kPa(0.5))
export const vapourShareOfAir = quantity('Share of water vapour in the air', 'x_v', 'share', [0, 0.3], percent(0.1))
export const enhancement = quantity('Enhancement factor', 'f_e', 'number', [1, 1.02], 0.0001)
export const compressibility = quantity('Compressibility factor of air', 'Z', 'number', [0.99, 1.01], 0.0001)
export const geopotentialAltitude = quantity('Geopotential altitude', 'H', 'distance', [-1000, 5000], 10, { show: ['m', 'ft'] })
export const densityAltitudeOf = quantity('Density altitude', 'H_ρ', 'distance', [-3000, 8000], 20, { show: ['m', 'ft'] })
export const gasViscosity = quantity('Dynamic viscosity of a gas', 'μ', 'dynamicViscosity', [1e-5, 7e-5], 1e-6, { show: ['µPa s', 'µPa s'] })
export const soundSpeed = quantity('Speed of sound', 'c', 'speed', [250, 900], 1)
export const enthalpyFlow = quantity('Rise of enthalpy flow', 'ΔH', 'power', [-300e3, 300e3], 500)
export const exhaustGasTemperature = quantity('Exhaust gas temperature', 'T_x', 'temperature', [degC(200), degC(1150)], 10)
export const exhaustEnthalpyOf = quantity('Exhaust enthalpy above 25 °C', 'h_x', 'specificEnergy', [150e3, 1500e3], 10e3)
