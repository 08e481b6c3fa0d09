import { type Check } from '../check.ts'

const estimate = (by: string): string => `An estimate from two diameters, set beside a compressor that was designed and measured: ${by}. The case stands here to show the size of the error.`
const R = Math.PI / 30
const stages = { temperature: 288.15, pressure: 101325, throat: 0.53 }

/** Wheels whose size, speed, flow and ratio were published, beside what size alone would make one expect. */
export const checks: readonly Check[] = [
  {
    id: 'wheel-choke-standstill', of: 'inducer-choke', in: { inducer: '50 mm', throat: 0.5, speed: 1e-6, temperature: 288.15, pressure: 101325 }, out: { out: { value: 0.23687, unit: 'kg/s', tolerance: 6e-5 } },
    source: 'A throat that stands still: the choked flow of a nozzle, 0.04042 p/sqrt(T) for each square metre (Çengel and Boles, Thermodynamics, one-dimensional isentropic flow, four figures)', confidence: 'from memory',
  },
  {
    id: 'wheel-nasa-cc3', of: 'compressor-from-wheel', in: { ...stages, inducer: 0.21, exducer: 0.431, speed: 21789 * R, flow: 4.54 }, out: { ratio: { value: 4, unit: '1', tolerance: 0.05 } },
    source: 'T. F. McKain, G. J. Holbrook, Coordinates for a High Performance 4:1 Pressure Ratio Centrifugal Compressor, NASA CR-204134 (1997): design point', confidence: 'from memory', differs: estimate('27 % low at its design flow, where a vaned diffuser holds the ratio up to the right edge'),
  },
  {
    id: 'wheel-radiver', of: 'compressor-from-wheel', in: { ...stages, inducer: 0.1545, exducer: 0.27, speed: 35200 * R, flow: 2.5 }, out: { ratio: { value: 4.1, unit: '1', tolerance: 0.05 } },
    source: 'K. U. Ziegler, H. E. Gallus, R. Niehuis, A Study on Impeller-Diffuser Interaction, part I, J. Turbomachinery 125 (2003): design speed', confidence: 'from memory', differs: estimate('19 % low'),
  },
  {
    id: 'wheel-srv2', of: 'compressor-from-wheel', in: { ...stages, inducer: 0.156, exducer: 0.224, speed: 50000 * R, flow: 2.55 }, out: { ratio: { value: 6.1, unit: '1', tolerance: 0.05 } },
    source: 'G. Eisenlohr and others, Investigation of the Flow through a High Pressure Ratio Centrifugal Impeller, ASME GT-2002-30394: impeller alone', confidence: 'from memory', differs: estimate('8 % low beside an impeller without its diffuser’s losses'),
  },
]
