import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { chamberDisplacement } from './chamberDisplacement.ts'
import { engineCompressionRatio, engineEccentricity, engineFlankGap, engineGeneratingRadius, enginePlugVolume, engineShift, engineWidth } from './fields.ts'
import { flankArc } from './flankArc.ts'
import { flankGapVolume } from './flankGapVolume.ts'
import { minimumVolume, recessVolume } from './quantities.ts'
import { recessForCompressionRatio } from './recessForCompressionRatio.ts'
import { theoreticalMinimumVolume } from './theoreticalMinimumVolume.ts'

export default calculation({
  id: 'recess-for-compression-ratio', title: 'Rotor recess for a compression ratio', theme: 'engine', article: 'compression-ratio-and-the-rotor-recess', cautions: ['knock', 'model-only'],
  asks: 'How large must the recess in each rotor flank be for this compression ratio?',
  in: {
    ratio: engineCompressionRatio, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift,
    gap: engineFlankGap, plugs: enginePlugVolume,
  },
  out: { recess: recessVolume, least: minimumVolume, gapVolume: role(minimumVolume, 'V_g', 'Volume of the flank gap') },
  curve: ['ratio', 'recess'],
  answer({ ratio, generatingRadius, eccentricity, width, shift, gap, plugs }) {
    const swept = chamberDisplacement({ generatingRadius, eccentricity, width, shift })
    const least = theoreticalMinimumVolume({ generatingRadius, eccentricity, width, shift })
    const gapVolume = flankGapVolume({ gap, flank: flankArc({ generatingRadius, eccentricity }), width })
    const recess = recessForCompressionRatio({ displacement: swept, compressionRatio: ratio, minimumVolume: least, gapVolume, plugVolume: plugs })
    if (!(recess >= 0)) throw new NoAnswer('recess-for-compression-ratio', 'This geometry cannot reach that compression ratio: gap, plug holes and the plain flank already leave more volume than it allows.')
    return { recess, least, gapVolume }
  },
  says: () => 'Each flank needs a recess of {recess} for {ratio}. The plain flank leaves {least} and the gap {gapVolume}: check all six with a burette, for they must also match each other.',
  leavesOut: 'Volumes under the seals and beside the rotor; growth and wear.',
})
