import { type Constant } from '../formula/constants.ts'

/** Annealed copper as the standard of resistance states it: 1/58 Ω mm²/m at 20 °C. */
export const copperResistivity: Constant = { name: 'resistivity of annealed copper at 20 °C', symbol: 'ρ_20', value: 1e-6 / 58, unit: 'ohm m', source: 'IEC 60028' }
export const copperCoefficient: Constant = { name: 'temperature coefficient of copper at 20 °C', symbol: 'α_20', value: 0.00393, unit: '1/K', source: 'IEC 60028' }
export const copperReference: Constant = { name: 'temperature of those values', symbol: 'T_20', value: 293.15, unit: 'K', source: 'IEC 60028' }
