import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { axleRatio, rollingRadius } from '../driveline/fields.ts'
import { gear } from '../driveline/quantities.ts'
import { ratioIn, ratiosOf } from '../driveline/ratioIn.ts'
import { role } from '../quantity/quantity.ts'
import { apexPathPerTurn } from './apexPathPerTurn.ts'
import { distanceSlid } from './distanceSlid.ts'
import { engineEccentricity, engineGeneratingRadius, engineShift } from './fields.ts'
import { leaningAngle } from './leaningAngle.ts'
import { drivenDistance, leaningAngle as leaningAngleOf, sealPathOverRoad as overRoad, sealPathPerTurn } from './quantities.ts'
import { sealPathOverRoad } from './sealPathOverRoad.ts'

export default calculation({
  id: 'apex-seal-path', title: 'Path of the apex seals', theme: 'engine', article: 'seals-at-speed', cautions: ['model-only'],
  asks: 'How far do the apex seals slide while the car drives, and how far do they lean?',
  in: {
    driven: free(drivenDistance, 1000), gear: free(gear, 'fourth'), ...ratiosOf, finalDrive: axleRatio, radius: rollingRadius,
    generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, shift: engineShift,
  },
  out: { slid: role(drivenDistance, 's_s', 'Distance an apex seal slides'), over: overRoad, perTurn: sealPathPerTurn, lean: leaningAngleOf },
  curve: ['driven', 'slid'],
  answer({ driven, gear, finalDrive, radius, generatingRadius, eccentricity, shift, ...ratios }) {
    const lean = leaningAngle({ generatingRadius, eccentricity })
    if (Number.isNaN(lean)) throw new NoAnswer('apex-seal-path', 'No rotor fits this housing: the generating radius must be more than three times the eccentricity.')
    const perTurn = apexPathPerTurn({ generatingRadius, eccentricity, shift })
    const over = sealPathOverRoad({ perTurn, ratio: ratioIn(gear, ratios), finalDrive, radius })
    return { slid: distanceSlid({ driven, over }), over, perTurn, lean }
  },
  says: () => 'In {gear} gear each apex seal slides {over} times as far as the car drives: {slid} in {driven}. In a shaft turn it slides {perTurn}, leaning up to {lean} to either side, so that its whole crown takes its share of the wear.',
  leavesOut: 'Bounce, the load on the seal at each place, and oil: distance alone does not tell wear.',
})
