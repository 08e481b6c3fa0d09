/** A constant of nature or of a standard: its SI value, unit and where the value stands. */
export type Constant = { readonly value: number; readonly unit: string; readonly symbol: string; readonly name: string; readonly source: string }

const constant = /* @__NO_SIDE_EFFECTS__ */ (name: string, symbol: string, value: number, unit: string, source: string): Constant => ({ name, symbol, value, unit, source })

export const gasConstant = constant('molar gas constant', 'R_u', 8.31446261815324, 'J/(mol K)', 'SI brochure, 9th edition: exact')
export const standardGravity = constant('standard acceleration of gravity', 'g_n', 9.80665, 'm/s²', 'ISO 80000-3: exact')
export const stefanBoltzmann = constant('Stefan-Boltzmann constant', 'σ', 5.670374419e-8, 'W/(m² K⁴)', 'CODATA 2018')
export const secondsPerHour = constant('seconds in an hour', 't_h', 3600, 's', 'definition')
/** Dry air as ISO 2533 states it. */
export const airGasConstant = constant('specific gas constant of dry air', 'R_a', 287.05287, 'J/(kg K)', 'ISO 2533:1975')
export const waterVapourGasConstant = constant('specific gas constant of water vapour', 'R_w', 461.526, 'J/(kg K)', 'IAPWS-95: 461.51805 (ITS-90 basis); ideal-gas value from the molar mass 18.0153 g/mol')
export const standardPressure = constant('standard pressure at sea level', 'p_std', 101325, 'Pa', 'ISO 2533:1975')
export const standardTemperature = constant('standard temperature at sea level', 'T_std', 288.15, 'K', 'ISO 2533:1975')
/** Cold-air standard: what compressor and air formulas reckon with alike, so that their energies close. */
export const airSpecificHeat = constant('specific heat of dry air at constant pressure', 'c_pa', 1005, 'J/(kg K)', 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory: cold-air value; true from 0 to 100 °C within 0.5 %')
export const airHeatRatio = constant('ratio of specific heats of air', 'γ_a', 1.4, '1', 'ISO 2533:1975')
export const thousandRpm = constant('a thousand shaft turns a minute', 'n_1000', (1000 * Math.PI) / 30, 'rad/s', 'definition')
/** Rich exhaust gas: a straight line of specific heat over temperature, fitted from 500 to 1400 K by tests/reference/exhaustGas.py. */
const exhaustSource = 'Fit to the NASA polynomials of GRI-Mech 3.0 for petrol burned at lambda 0.85, enthalpy within 0.19 % from 500 to 1400 K'
export const exhaustHeatConstant = constant('specific heat of exhaust gas, constant part', 'c_x0', 994.7255, 'J/(kg K)', exhaustSource)
export const exhaustHeatSlope = constant('specific heat of exhaust gas, rise with temperature', 'c_x1', 0.27867, 'J/(kg K²)', exhaustSource)
export const exhaustGasConstant = constant('specific gas constant of rich exhaust gas', 'R_x', 296.18, 'J/(kg K)', exhaustSource)
export const enthalpyReference = constant('reference temperature of enthalpies', 'T_ref', 298.15, 'K', 'definition: 25 °C')
export const airMolarMass = constant('molar mass of dry air', 'M_a', 0.02896546, 'kg/mol', 'CIPM-2007: Picard and others, Metrologia 45 (2008) 149, carbon dioxide at 400 µmol/mol')
export const waterMolarMass = constant('molar mass of water', 'M_w', 0.01801528, 'kg/mol', 'CIPM-2007: Picard and others, Metrologia 45 (2008) 149')
export const aluminiumSpecificHeat = constant('specific heat of aluminium', 'c_Al', 903, 'J/(kg K)', 'Incropera and others, 6th edition, table A.1: pure aluminium at 300 K; from memory')
export const ironSpecificHeat = constant('specific heat of iron', 'c_Fe', 447, 'J/(kg K)', 'Incropera and others, 6th edition, table A.1: pure iron at 300 K; from memory')
