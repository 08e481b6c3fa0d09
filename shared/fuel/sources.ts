import { type Sources } from '../data/source.ts'

/** Works on which the fuel formulas rest. */
export const sources = {
  'sae-j1832': { author: 'SAE International', title: 'J1832: Low Pressure Gasoline Fuel Injector', year: '2001', seen: 'from memory' },
  'iupac-weights': { author: 'IUPAC', title: 'Standard atomic weights, abridged', year: '2021', seen: 'from memory' },
  'api-mpms-11-1': { author: 'American Petroleum Institute', title: 'Manual of Petroleum Measurement Standards, chapter 11.1 (ASTM D1250): volume correction factors, table 54B', year: '1980', seen: 'confirmed by search' },
  'ethanol-density-dippr': { author: 'C. Bell and others', title: 'thermo 0.6.1 and chemicals 1.5.2: density of saturated liquid ethanol', year: '2026', place: 'Python package index', seen: 'carried by a reference library' },
  'epa-ap42-7-1': { author: 'US Environmental Protection Agency', title: 'AP-42, fifth edition, chapter 7.1: Organic Liquid Storage Tanks', year: '2006', place: 'figure 7.1-14b and table 7.1-2', seen: 'from memory' },
  'afdc-fuels': { author: 'US Department of Energy, Alternative Fuels Data Center', title: 'Fuel Properties Comparison', year: '2021', seen: 'confirmed by search' },
  'churchill-1977': { author: 'S. W. Churchill', title: 'Friction-factor equation spans all fluid-flow regimes', year: '1977', place: 'Chemical Engineering 84 (24), 91-92', seen: 'carried by a reference library' },
  'colebrook-1939': { author: 'C. F. Colebrook', title: 'Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws', year: '1939', place: 'Journal of the Institution of Civil Engineers 11, 133-156', seen: 'carried by a reference library' },
  'haaland-1983': { author: 'S. E. Haaland', title: 'Simple and explicit formulas for the friction factor in turbulent pipe flow', year: '1983', place: 'Journal of Fluids Engineering 105, 89-90', seen: 'carried by a reference library' },
  'swamee-jain-1976': { author: 'P. K. Swamee and A. K. Jain', title: 'Explicit equations for pipe-flow problems', year: '1976', place: 'Journal of the Hydraulics Division 102 (5), 657-664', seen: 'carried by a reference library' },
  'white-fluid': { author: 'F. M. White', title: 'Fluid Mechanics', year: '2011', place: 'McGraw-Hill, seventh edition', seen: 'from memory' },
  'faa-ac43': { author: 'US Federal Aviation Administration', title: 'AC 43.13-1B: Acceptable Methods, Techniques, and Practices', year: '1998', place: 'table 9-3 (MIL-H-8794 hose)', seen: 'confirmed by search' },
  'aquino-1981': { author: 'C. F. Aquino', title: 'Transient A/F Control Characteristics of the 5 Liter Central Fuel Injection Engine', year: '1981', place: 'SAE 810494', seen: 'from memory' },
  'iso-gum': { author: 'ISO and IEC', title: 'Guide 98-3: Guide to the expression of uncertainty in measurement', year: '2008', place: 'section 5.1', seen: 'from memory' },
  'wylie-streeter': { author: 'E. B. Wylie and V. L. Streeter', title: 'Fluid Transients in Systems', year: '1993', place: 'chapters 1 and 2', seen: 'confirmed by search' },
  'darcy-1856': { author: 'H. Darcy', title: 'Les fontaines publiques de la ville de Dijon', year: '1856', place: 'note D', seen: 'from memory' },
} as const satisfies Sources
