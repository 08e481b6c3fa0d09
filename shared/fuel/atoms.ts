import { type Constant } from '../formula/constants.ts'

const weights = 'IUPAC abridged standard atomic weights, 2021'
/** Molar masses of what fuels and air are made of. */
export const carbonMass: Constant = { name: 'molar mass of carbon', symbol: 'M_C', value: 12.011e-3, unit: 'kg/mol', source: weights }
export const hydrogenMass: Constant = { name: 'molar mass of hydrogen', symbol: 'M_H', value: 1.008e-3, unit: 'kg/mol', source: weights }
export const oxygenMass: Constant = { name: 'molar mass of oxygen', symbol: 'M_O', value: 15.999e-3, unit: 'kg/mol', source: weights }
export const airMass: Constant = { name: 'molar mass of dry air', symbol: 'M_a', value: 28.96442e-3, unit: 'kg/mol', source: 'ISO 2533:1975: 28.964 420 kg/kmol' }
export const oxygenInAir: Constant = { name: 'oxygen in dry air, share of moles', symbol: 'x_O2', value: 0.2095, unit: '1', source: 'Heywood, Internal Combustion Engine Fundamentals (1988), section 3.2: 20.95 %' }
/** Energies of formation at 25 °C of what a fuel burns to. */
export const carbonDioxideFormation: Constant = { name: 'energy of formation of carbon dioxide', symbol: 'h_CO2', value: -393474, unit: 'J/mol', source: 'Active Thermochemical Tables by way of chemicals 1.5.2' }
export const steamFormation: Constant = { name: 'energy of formation of steam', symbol: 'h_H2O', value: -241822, unit: 'J/mol', source: 'Active Thermochemical Tables by way of chemicals 1.5.2' }
/** Ethanol, C₂H₆O. */
export const ethanolHydrogenToCarbon: Constant = { name: 'hydrogen atoms per carbon atom of ethanol', symbol: 'y_e', value: 3, unit: '1', source: 'definition: C2H6O' }
export const ethanolOxygenToCarbon: Constant = { name: 'oxygen atoms per carbon atom of ethanol', symbol: 'z_e', value: 0.5, unit: '1', source: 'definition: C2H6O' }
export const ethanolHeatingValue: Constant = { name: 'lower heating value of ethanol', symbol: 'H_e', value: 26.95e6, unit: 'J/kg', source: 'US Department of Energy, Alternative Fuels Data Center, Fuel Properties Comparison: 11,585 Btu/lb' }
/** Volume shares of fuels are stated at this temperature. */
export const volumeBase: Constant = { name: 'temperature at which fuel volumes are stated', symbol: 'T_15', value: 288.15, unit: 'K', source: 'ISO 5024: 15 °C' }
/** Lubricating oil, which premix burns. */
export const oilHydrogenToCarbon: Constant = { name: 'hydrogen atoms per carbon atom of oil', symbol: 'y_o', value: 1.9, unit: '1', source: 'common practice, no source' }
