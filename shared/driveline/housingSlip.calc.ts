import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { mm, MPa } from '../quantity/si.ts'
import { dowelTorqueOf } from './dowelTorqueOf.ts'
import { frictionTorqueOfJoint } from './frictionTorqueOfJoint.ts'
import { heldOverAsked } from './heldOverAsked.ts'
import { peakTorqueOf } from './peakTorqueOf.ts'
import { boltCircleRadius, boltCount, boltPreload, dowelCount, dowelDiameter, heldTorque, jointFriction, reserveOver, shearStrength, torquePeak } from './quantities.ts'

export default calculation({
  id: 'housing-slip',
  title: 'Slip of the housing stack',
  theme: 'driveline',
  asks: 'Do the tension bolts hold the housings against torque by friction, or do the dowels have to?',
  article: 'fasteners-and-preload',
  cautions: ['hot-metal', 'model-only'],
  in: {
    torque: engine.torque, peak: free(torquePeak, 3), bolts: free(boltCount, 17), preload: free(boltPreload, 20000), friction: free(jointFriction, 0.12), radius: free(boltCircleRadius, mm(130)),
    dowels: free(dowelCount, 2), diameter: free(dowelDiameter, mm(11)), stress: free(shearStrength, MPa(200)), dowelRadius: free(boltCircleRadius, mm(125), 'Radius of the dowels'),
  },
  out: { asked: role(heldTorque, 'M_max', 'Highest torque on the stack'), faces: role(heldTorque, 'M_r', 'Held by friction'), pins: role(heldTorque, 'M_p', 'Held by dowels'), reserve: role(reserveOver, 'S_r', 'Friction over what is asked'), pinReserve: role(reserveOver, 'S_p', 'Dowels over what is asked') },
  curve: ['preload', 'reserve'],
  answer({ torque, peak, bolts, preload, friction, radius, dowels, diameter, stress, dowelRadius }) {
    const asked = peakTorqueOf({ torque, peak })
    const faces = frictionTorqueOfJoint({ bolts, friction, preload, radius })
    const pins = dowelTorqueOf({ dowels, diameter, stress, radius: dowelRadius })
    return { asked, faces, pins, reserve: heldOverAsked({ held: faces, asked }), pinReserve: heldOverAsked({ held: pins, asked }) }
  },
  says: ({ reserve }) => reserve < 1
    ? 'Friction holds {faces}, less than the {asked} of a peak: the faces slip onto their dowels, which hold {pins}.'
    : 'Friction holds {faces}, {reserve} times the {asked} of a peak: the dowels only place the housings. By themselves they would hold {pins}.',
  leavesOut: 'Preload lost to heat and settling, sealing compound between the faces, bending of the stack, and torsional vibration.',
})
