import { calculation } from '../calculation/calculation.ts'
import { endOfCompression } from './endOfCompression.ts'
import { engineCompressionExponent, engineCompressionRatio } from './fields.ts'
import { at } from './point.ts'

export default calculation({
  id: 'end-of-compression', title: 'End of compression', theme: 'engine', article: 'compression-ratio-and-the-rotor-recess', cautions: ['knock', 'model-only'],
  asks: 'What pressure and temperature would compression alone reach, before the spark?',
  in: { manifold: at.manifold, charge: at.charge, compressionRatio: engineCompressionRatio, exponent: engineCompressionExponent },
  out: { pressure: at.endPressure, temperature: at.endTemperature },
  curve: ['manifold', 'pressure'],
  answer({ manifold, charge, compressionRatio, exponent }) {
    return endOfCompression({ pressure: manifold, temperature: charge, compressionRatio, ratioOfSpecificHeats: exponent })
  },
  says: () => 'Compression alone would reach {pressure} and {temperature}. It is no knock limit and no peak pressure: it only lets you compare a hotter charge, more boost or another rotor with what you know to have run well.',
  leavesOut: 'Burned gas left over from the turn before, fuel that boils, late port closing, hot spots, and everything after the spark.',
})
