import { type Sources } from '../data/source.ts'

export const sources = {
  'ashrae-2001': { author: 'ASHRAE', title: 'Handbook of Fundamentals, chapter 21: physical properties of secondary coolants', year: '2001', place: 'as digitised in the CoolProp repository, dev/incompressible_liquids/CPIncomp/data', seen: 'carried by a reference library' },
  'iapws-if97': { author: 'International Association for the Properties of Water and Steam', title: 'R7-97(2012): Revised release on the IAPWS industrial formulation 1997', year: '2012', seen: 'confirmed by search' },
  'kays-london': { author: 'W. M. Kays, A. L. London', title: 'Compact Heat Exchangers, 3rd edition', year: '1984', seen: 'from memory' },
  'incropera': { author: 'F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine', title: 'Fundamentals of Heat and Mass Transfer, 6th edition', year: '2007', seen: 'confirmed by search' },
  'mason-1955': { author: 'J. L. Mason', title: 'Heat transfer in crossflow, Proceedings of the Second US National Congress of Applied Mechanics', year: '1955', place: 'pages 801-803', seen: 'carried by a reference library' },
  'hairer-ode': { author: 'E. Hairer, S. P. Nørsett, G. Wanner', title: 'Solving Ordinary Differential Equations I, 2nd edition', year: '1993', seen: 'from memory' },
  'chang-wang-1997': { author: 'Y.-J. Chang, C.-C. Wang', title: 'A generalized heat transfer correlation for louver fin geometry, International Journal of Heat and Mass Transfer 40', year: '1997', place: 'pages 533-544', seen: 'from memory' },
  'gnielinski-1976': { author: 'V. Gnielinski', title: 'New equations for heat and mass transfer in turbulent pipe and channel flow, International Chemical Engineering 16', year: '1976', place: 'pages 359-368', seen: 'from memory' },
  'brennen-pumps': { author: 'C. E. Brennen', title: 'Hydrodynamics of Pumps', year: '1994', place: 'chapter 5', seen: 'from memory' },
  'iso-2533-transport': { author: 'ISO', title: 'ISO 2533:1975 Standard atmosphere', year: '1975', place: 'equations for viscosity and conductivity', seen: 'from memory' },
  'raoult': { author: 'F.-M. Raoult', title: 'Loi générale des tensions de vapeur des dissolvants, Comptes rendus 104', year: '1887', place: 'pages 1430-1433', seen: 'from memory' },
  'en-12524': { author: 'CEN', title: 'EN 12524: Building materials and products, hygrothermal properties, tabulated design values', year: '2000', place: 'as carried by the ht library', seen: 'carried by a reference library' },
} as const satisfies Sources
