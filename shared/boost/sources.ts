import { type Sources } from '../data/source.ts'

export const sources = {
  'cohen-gas-turbine': { of: 'cohen-rogers', author: 'H. Cohen, G. F. C. Rogers, H. I. H. Saravanamuttoo', title: 'Gas Turbine Theory', year: '1996', seen: 'from memory' },
  'nasa-glenn-corrected-flow': { author: 'NASA Glenn Research Center', title: 'Corrected airflow per area, Beginner’s Guide to Propulsion', seen: 'confirmed by search' },
  'stodola-ellipse': { author: 'Stodola, A.', title: 'Dampf- und Gasturbinen', year: '1924', seen: 'from memory' },
  'cooke-stodola': { author: 'Cooke, D. H.', title: 'On Prediction of Off-Design Multistage Turbine Pressures by Stodola’s Ellipse, J. Eng. Gas Turbines Power 107 (3)', year: '1985', seen: 'from memory' },
  'heywood-ice': { of: 'heywood-1988', author: 'J. B. Heywood', title: 'Internal Combustion Engine Fundamentals', year: '1988', seen: 'from memory' },
  'kays-london': { author: 'W. M. Kays, A. L. London', title: 'Compact Heat Exchangers, 3rd edition', year: '1984', seen: 'from memory' },
  'fritsch-butland': { author: 'Fritsch, F. N., Butland, J.', title: 'A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5, 300-304', year: '1984', seen: 'carried by a reference library' },
  'rennels-2012': { author: 'Rennels, D. C., Hudson, H. M.', title: 'Pipe Flow: A Practical and Comprehensive Guide', year: '2012', seen: 'carried by a reference library' },
  'moraal-kolmanovsky-1999': { author: 'Moraal, P., Kolmanovsky, I.', title: 'Turbocharger Modeling for Automotive Control Applications', year: '1999', place: 'SAE 1999-01-0908', seen: 'from memory' },
  'dixon-turbomachinery': { author: 'Dixon, S. L.', title: 'Fluid Mechanics and Thermodynamics of Turbomachinery', year: '1998', seen: 'from memory' },
  'asm-stainless': { author: 'ASM International (ed. J. R. Davis)', title: 'ASM Specialty Handbook: Stainless Steels', year: '1994', place: 'maximum service temperatures in air, intermittent service', seen: 'from memory' },
  'high-temperature-stainless': { title: 'High-temperature properties of stainless steels: table of stress for rupture in 1,000 hours, as producers hand it on', place: 'refers to ASM Metals Handbook, volume 3', seen: 'confirmed by search' },
} as const satisfies Sources
