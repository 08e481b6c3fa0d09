import { type Sources } from '../data/source.ts'

export const sources = {
  'yamamoto-1981': { author: 'K. Yamamoto', title: 'Rotary Engine', year: '1981', seen: 'from memory' },
  'ansdale-1968': { author: 'R. F. Ansdale, D. J. Lockley', title: 'The Wankel RC Engine: Design and Performance', year: '1968', seen: 'from memory' },
  'bensinger-1973': { author: 'W.-D. Bensinger', title: 'Rotationskolben-Verbrennungsmotoren', year: '1973', seen: 'confirmed by search' },
  'heywood-1988': { author: 'J. B. Heywood', title: 'Internal Combustion Engine Fundamentals', year: '1988', seen: 'from memory' },
  'taylor-1985': { author: 'C. F. Taylor', title: 'The Internal Combustion Engine in Theory and Practice, volume 1', year: '1985', seen: 'from memory' },
  'pulkrabek': { author: 'W. W. Pulkrabek', title: 'Engineering Fundamentals of the Internal Combustion Engine', year: '2004', seen: 'from memory' },
  'sae-j1349': { author: 'SAE International', title: 'J1349: Engine Power Test Code, Spark Ignition and Compression Ignition, Net Power Rating', year: '2004', seen: 'confirmed by search' },
  'nist-sp811': { author: 'A. Thompson, B. N. Taylor', title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811', year: '2008', place: 'appendix B', seen: 'from memory' },
  'iso-1585': { author: 'ISO', title: 'ISO 1585: Road vehicles – Engine test code – Net power', year: '2020', seen: 'from memory' },
  'engelman-1973': { author: 'H. W. Engelman', title: 'Design of a tuned intake manifold', year: '1973', place: 'ASME 73-WA/DGP-2', seen: 'from memory' },
  'kinsler': { author: 'L. E. Kinsler, A. R. Frey, A. B. Coppens, J. V. Sanders', title: 'Fundamentals of Acoustics', year: '2000', seen: 'from memory' },
} as const satisfies Sources
