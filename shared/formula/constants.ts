/** A constant of nature or of a standard: its SI value, unit and where the value stands. */
export type Constant = { readonly value: number; readonly unit: string; readonly symbol: string; readonly name: string; readonly source: string }

const constant = /* @__NO_SIDE_EFFECTS__ */ (name: string, symbol: string, value: number, unit: string, source: string): Constant => ({ name, symbol, value, unit, source })

export const gasConstant = constant('molar gas constant', 'R_u', 8.31446261815324, 'J/(mol K)', 'SI brochure, 9th edition: exact')
export const standardGravity = constant('standard acceleration of gravity', 'g_n', 9.80665, 'm/s²', 'ISO 80000-3: exact')
export const stefanBoltzmann = constant('Stefan-Boltzmann constant', 'σ', 5.670374419e-8, 'W/(m² K⁴)', 'CODATA 2018')
/** Dry air as ISO 2533 states it. */
export const airGasConstant = constant('specific gas constant of dry air', 'R_a', 287.05287, 'J/(kg K)', 'ISO 2533:1975')
export const waterVapourGasConstant = constant('specific gas constant of water vapour', 'R_w', 461.526, 'J/(kg K)', 'IAPWS-95: 461.51805 (ITS-90 basis); ideal-gas value from the molar mass 18.0153 g/mol')
