import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { deg } from '../quantity/si.ts'
import { chamberDisplacement } from './chamberDisplacement.ts'
import { chamberVolume } from './chamberVolume.ts'
import { engineEccentricity, engineGeneratingRadius, engineShift, engineWidth } from './fields.ts'
import { leaningAngle } from './leaningAngle.ts'
import { chamberVolume as chamberVolumeOf, displacement, leaningAngle as leaningAngleOf, minimumVolume, shaftAngle, theoreticalRatio } from './quantities.ts'
import { theoreticalCompressionRatio } from './theoreticalCompressionRatio.ts'
import { theoreticalMinimumVolume } from './theoreticalMinimumVolume.ts'

export default calculation({
  id: 'chamber-volume', title: 'Chamber volume over shaft angle', theme: 'engine', article: 'how-a-two-rotor-breathes', cautions: ['model-only'],
  asks: 'How large is a chamber at each angle of the shaft, and what does that make the displacement?',
  in: { generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, angle: free(shaftAngle, deg(90)) },
  out: { volume: chamberVolumeOf, displacement, least: minimumVolume, ratio: theoreticalRatio, lean: leaningAngleOf },
  curve: ['angle', 'volume'],
  answer({ generatingRadius, eccentricity, width, shift, angle }) {
    const lean = leaningAngle({ generatingRadius, eccentricity })
    if (Number.isNaN(lean)) throw new NoAnswer('chamber-volume', 'No rotor fits this housing: the generating radius must be more than three times the eccentricity.')
    const swept = chamberDisplacement({ generatingRadius, eccentricity, width, shift })
    const least = theoreticalMinimumVolume({ generatingRadius, eccentricity, width, shift })
    return { volume: chamberVolume({ generatingRadius, eccentricity, width, shift, shaftAngle: angle }), displacement: swept, least, ratio: theoreticalCompressionRatio({ displacement: swept, minimumVolume: least }), lean }
  },
  says: () => 'At {angle} a chamber holds {volume}. It grows from {least} to {displacement} more over three quarters of a turn; with a plain flank that would be a compression ratio of {ratio}, and the recess takes it down from there.',
  leavesOut: 'The recess, gaps and plug holes; wear; side clearance.',
})
