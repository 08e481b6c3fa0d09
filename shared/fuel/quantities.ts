import { quantity } from '../quantity/quantity.ts'
import { bar, ccPerMin, ms, percent } from '../quantity/si.ts'

export const injectorFlow = quantity('Injector flow', 'Q', 'volumeFlow', [ccPerMin(100), ccPerMin(4000)], ccPerMin(20), { show: ['cm³/min', 'cm³/min'] })
export const nozzleDrop = quantity('Pressure across the nozzle', 'Δp', 'pressureDifference', [bar(1), bar(10)], bar(0.1), { show: ['bar', 'psi'] })
export const railPressure = quantity('Rail pressure', 'p_r', 'gaugePressure', [bar(1.5), bar(10)], bar(0.1))
export const pulseWidth = quantity('Pulse width', 't_i', 'time', [ms(0.3), ms(40)], ms(0.05))
export const dutyCycle = quantity('Duty', 'D', 'share', [0, 1.5], percent(2))
export const deadTime = quantity('Dead time', 't_d', 'time', [ms(0.1), ms(3)], ms(0.05))
export const fuelPerCharge = quantity('Fuel per charge', 'm_f', 'massPerTurn', [1e-6, 500e-6], 1e-6, { show: ['mg/rev', 'mg/rev'] })
export const fuelDensity = quantity('Fuel density', 'ρ_f', 'density', [600, 900], 5, { show: ['kg/m³', 'lb/US gal'] })
