import { type Sources } from '../data/source.ts'

export const sources = {
  'iso-2533': { author: 'ISO', title: 'ISO 2533: Standard Atmosphere', year: '1975', seen: 'confirmed by search' },
  'cipm-2007': { author: 'A. Picard, R. S. Davis, M. Gläser, K. Fujii', title: 'Revised formula for the density of moist air (CIPM-2007)', year: '2008', place: 'Metrologia 45, 149–155', seen: 'confirmed by search' },
  'wagner-pruss-1993': { author: 'W. Wagner, A. Pruss', title: 'International equations for the saturation properties of ordinary water substance (IAPWS SR1-86)', year: '1993', place: 'J. Phys. Chem. Ref. Data 22, 783–787', seen: 'confirmed by search' },
  'gri-mech-3': { author: 'G. P. Smith and others', title: 'GRI-Mech 3.0, thermodynamic data in the NASA polynomial form', year: '1999', seen: 'carried by a reference library' },
  'cohen-rogers': { author: 'H. Cohen, G. F. C. Rogers, H. I. H. Saravanamuttoo', title: 'Gas Turbine Theory', year: '1996', seen: 'from memory' },
  'ashrae-fundamentals': { author: 'ASHRAE', title: 'Handbook Fundamentals, chapter 1: Psychrometrics', year: '2017', seen: 'confirmed by search' },
  'cengel-boles': { author: 'Y. A. Çengel, M. A. Boles', title: 'Thermodynamics: An Engineering Approach', year: '2015', seen: 'from memory' },
} as const satisfies Sources
