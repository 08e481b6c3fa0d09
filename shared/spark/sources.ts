import { type Sources } from '../data/source.ts'

export const sources = {
  'iec-60028': { author: 'IEC', title: 'IEC 60028: International standard of resistance for copper', year: '1925', seen: 'from memory' },
  'iso-8854': { author: 'ISO', title: 'ISO 8854: Road vehicles, alternators with regulators, test methods and general requirements', year: '2012', seen: 'from memory' },
  'nilsson-circuits': { author: 'J. W. Nilsson, S. A. Riedel', title: 'Electric Circuits, 9th edition', year: '2011', seen: 'from memory' },
} as const satisfies Sources
