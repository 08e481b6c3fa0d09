import { type Sources } from '../data/source.ts'

export const sources = {
  'astm-d341': { author: 'ASTM International', title: 'D341: Standard Practice for Viscosity-Temperature Equations and Charts for Liquid Petroleum or Hydrocarbon Products', year: '2020', seen: 'confirmed by search' },
  'astm-d2270': { author: 'ASTM International', title: 'D2270 (ISO 2909): Standard Practice for Calculating Viscosity Index from Kinematic Viscosity at 40 °C and 100 °C', year: '2016', seen: 'carried by a reference library' },
  'astm-d7152': { author: 'ASTM International', title: 'D7152: Standard Practice for Calculating Viscosity of a Blend of Petroleum Products', year: '2016', seen: 'from memory' },
  'astm-d1250': { author: 'API and ASTM International', title: 'API MPMS 11.1 / ASTM D1250: Temperature and Pressure Volume Correction Factors, lubricating oils', year: '2004', seen: 'from memory' },
  'cragoe-1929': { author: 'C. S. Cragoe', title: 'Thermal Properties of Petroleum Products, NBS Miscellaneous Publication 97', year: '1929', seen: 'from memory' },
  'sae-j300': { author: 'SAE International', title: 'J300: Engine Oil Viscosity Classification', year: '2015', seen: 'confirmed by search' },
  'iso-3448': { author: 'ISO', title: 'ISO 3448: Industrial liquid lubricants, ISO viscosity classification', year: '1992', seen: 'from memory' },
  'maples-refinery': { author: 'R. E. Maples', title: 'Petroleum Refinery Process Economics, 2nd edition', year: '2000', seen: 'confirmed by search' },
  'seireg-dandage': { author: 'A. S. Seireg and S. Dandage', title: 'Empirical Design Procedure for the Thermodynamic Behavior of Journal Bearings, Journal of Lubrication Technology 104', year: '1982', seen: 'confirmed by search' },
  'raimondi-boyd': { author: 'A. A. Raimondi and J. Boyd', title: 'A Solution for the Finite Journal Bearing and Its Application to Analysis and Design, parts I to III, Transactions of ASLE 1, pages 159-209', year: '1958', seen: 'confirmed by search' },
  'shigley-bearings': { of: 'shigley-machine-design', author: 'R. G. Budynas, J. K. Nisbett', title: 'Shigley’s Mechanical Engineering Design, 9th edition', year: '2011', place: 'chapter 12, Lubrication and Journal Bearings', seen: 'from memory' },
  'trumpler': { author: 'P. R. Trumpler', title: 'Design of Film Bearings', year: '1966', seen: 'confirmed by search' },
  'dynamics-of-rotating-machines': { author: 'M. I. Friswell, J. E. T. Penny, S. D. Garvey, A. W. Lees', title: 'Dynamics of Rotating Machines', year: '2010', seen: 'confirmed by search' },
  'martin-engine-bearings': { author: 'F. A. Martin', title: 'Developments in Engine Bearing Design, Tribology International 16', year: '1983', seen: 'from memory' },
  'merritt-hydraulic': { author: 'H. E. Merritt', title: 'Hydraulic Control Systems', year: '1967', seen: 'from memory' },
  'booker-1965': { author: 'J. F. Booker', title: 'Dynamically Loaded Journal Bearings: Mobility Method of Solution, Journal of Basic Engineering 87', year: '1965', seen: 'from memory' },
  'api-1509': { author: 'American Petroleum Institute', title: '1509: Engine Oil Licensing and Certification System, with annex E on base oils', year: '2021', seen: 'from memory' },
  'acea-sequences': { author: 'ACEA', title: 'European Oil Sequences for light-duty engines', year: '2021', seen: 'from memory' },
  'hamrock-films': { author: 'B. J. Hamrock, S. R. Schmid, B. O. Jacobson', title: 'Fundamentals of Fluid Film Lubrication', year: '2004', seen: 'from memory' },
} as const satisfies Sources
