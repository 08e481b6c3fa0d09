import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { chamberDisplacement } from './chamberDisplacement.ts'
import { compressionRatioOfRecess } from './compressionRatioOfRecess.ts'
import { engineEccentricity, engineFlankGap, engineGeneratingRadius, enginePlugVolume, engineRecess, engineShift, engineWidth } from './fields.ts'
import { flankArc } from './flankArc.ts'
import { flankGapVolume } from './flankGapVolume.ts'
import { compressionRatio, minimumVolume } from './quantities.ts'
import { theoreticalMinimumVolume } from './theoreticalMinimumVolume.ts'

export default calculation({
  id: 'compression-ratio-from-recess', title: 'Compression ratio from the recess', theme: 'engine', article: 'compression-ratio-and-the-rotor-recess', cautions: ['knock', 'model-only'],
  asks: 'What compression ratio does a measured recess give?',
  in: {
    recess: engineRecess, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, gap: engineFlankGap, plugs: enginePlugVolume,
  },
  out: { ratio: compressionRatio, least: minimumVolume, gapVolume: role(minimumVolume, 'V_g', 'Volume of the flank gap') },
  curve: ['recess', 'ratio'],
  answer({ recess, generatingRadius, eccentricity, width, shift, gap, plugs }) {
    const swept = chamberDisplacement({ generatingRadius, eccentricity, width, shift })
    const least = theoreticalMinimumVolume({ generatingRadius, eccentricity, width, shift })
    const gapVolume = flankGapVolume({ gap, flank: flankArc({ generatingRadius, eccentricity }), width })
    return { ratio: compressionRatioOfRecess({ displacement: swept, recess, minimumVolume: least, gapVolume, plugVolume: plugs }), least, gapVolume }
  },
  says: () => 'A recess of {recess} gives {ratio}. A cubic centimetre of carbon or of machining moves it: repeat the measurement on every flank.',
  leavesOut: 'Volumes under the seals and beside the rotor; growth and wear.',
})
