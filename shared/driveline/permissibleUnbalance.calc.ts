import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { mm, rpm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { balancedMass, balanceGrade, permissibleOffset, permissibleUnbalance, planeDistance, unbalanceForce } from './quantities.ts'
import { gradeSpeedOf } from './gradeSpeedOf.ts'
import { permissibleOffsetAt } from './permissibleOffsetAt.ts'
import { permissibleUnbalanceOf } from './permissibleUnbalanceOf.ts'
import { unbalanceForceAt } from './unbalanceForceAt.ts'
import { unbalanceOfPlane } from './unbalanceOfPlane.ts'

export default calculation({
  id: 'permissible-unbalance',
  title: 'Unbalance that may be left',
  theme: 'driveline',
  asks: 'How much unbalance may be left in a part of this grade?',
  article: 'balance-and-matched-marks',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    grade: free(balanceGrade, 'G2.5'), mass: free(balancedMass, 8), speed: free(shaftSpeed, rpm(8500), 'Highest service speed'),
    far: free(role(planeDistance, 'L_2'), mm(300), 'Centre of mass from the far plane'), span: free(planeDistance, mm(500), 'Distance between the planes'),
  },
  out: {
    unbalance: permissibleUnbalance, nearPlane: role(permissibleUnbalance, 'U_1', 'Share of the near plane'), offset: permissibleOffset,
    force: role(unbalanceForce, 'F_u', 'Force at the highest speed'),
  },
  curve: ['speed', 'unbalance'],
  answer({ grade, mass, speed, far, span }) {
    if (!(span >= far)) throw new NoAnswer('balance', 'The centre of mass lies between the two planes, so its distance from one cannot exceed the distance between them.')
    const offset = permissibleOffsetAt({ grade: gradeSpeedOf({ grade }), speed })
    const unbalance = permissibleUnbalanceOf({ mass, offset })
    return { offset, unbalance, nearPlane: unbalanceOfPlane({ whole: unbalance, far, span }), force: unbalanceForceAt({ unbalance, speed }) }
  },
  says: () => 'Grade {grade} at {speed} lets the centre of mass lie {offset} off the axis: {unbalance} in all, {nearPlane} of it in the near plane, a force of {force} turning with the shaft.',
  leavesOut: 'A rotor’s own offset turns at a third of shaft speed and cannot be corrected on the shaft; oil held in the rotors, and bearings.',
})
