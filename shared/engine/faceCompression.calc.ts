import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { bar, rpm } from '../quantity/si.ts'
import { faceAtSpeed } from './faceAtSpeed.ts'
import { engineCompressionExponent, engineCompressionRatio, siteAirPressure } from './fields.ts'
import { idealFacePressure } from './idealFacePressure.ts'
import { crankingSpeed, facePressure } from './quantities.ts'

export default calculation({
  id: 'face-compression',
  title: 'Compression of a face at a common cranking speed',
  theme: 'engine',
  asks: 'What would this face read at the speed that readings are compared at?',
  article: 'the-build-record',
  cautions: ['electrical', 'model-only'],
  in: { reading: free(facePressure, bar(7.2)), speed: free(crankingSpeed, rpm(210)), wanted: free(crankingSpeed, rpm(250), 'Cranking speed to compare at'), outside: siteAirPressure, ratio: engineCompressionRatio, exponent: engineCompressionExponent },
  out: { corrected: role(facePressure, 'p_w', 'At the speed to compare at'), ideal: role(facePressure, 'p_i', 'Reading without leakage') },
  curve: ['speed', 'corrected'],
  answer({ reading, speed, wanted, outside, ratio, exponent }) {
    const ideal = idealFacePressure({ outside, ratio, exponent })
    return { ideal, corrected: faceAtSpeed({ reading, ideal, speed, wanted, outside }) }
  },
  says: () => '{reading} at {speed} is {corrected} at {wanted}. Faces of one rotor that differ by more than about 1.5 bar want looking at: common practice, no source.',
  leavesOut: 'Oil that seals for a while, a cold engine, a gauge with its own volume, and throttle that was not open.',
})
