import { type Sources } from '../data/source.ts'

export const sources = {
  'shigley-machine-design': { author: 'R. G. Budynas, J. K. Nisbett', title: 'Shigley’s Mechanical Engineering Design, 9th edition', year: '2011', seen: 'from memory' },
  'timoshenko-goodier': { author: 'S. P. Timoshenko, J. N. Goodier', title: 'Theory of Elasticity, 3rd edition', year: '1970', seen: 'from memory' },
  'iso-21940-11': { author: 'ISO', title: 'ISO 21940-11: Mechanical vibration, rotor balancing, procedures and tolerances for rotors with rigid behaviour', year: '2016', seen: 'confirmed by search' },
  'iso-898-1': { author: 'ISO', title: 'ISO 898-1: Mechanical properties of fasteners made of carbon steel and alloy steel, bolts, screws and studs', year: '2013', seen: 'confirmed by search' },
  'vdi-2230-1': { author: 'VDI', title: 'VDI 2230-1: Systematic calculation of highly stressed bolted joints', year: '2015', seen: 'from memory' },
  'nsts-08307': { author: 'NASA Johnson Space Center', title: 'NSTS 08307 revision A: Criteria for preloaded bolts', year: '1998', seen: 'from memory' },
  'gillespie-dynamics': { author: 'T. D. Gillespie', title: 'Fundamentals of Vehicle Dynamics', year: '1992', seen: 'from memory' },
} as const satisfies Sources
