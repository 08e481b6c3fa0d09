import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { at } from './point.ts'
import { axleRatio, base, centre, drivenAxle, efficiency, firstGear, grip, lock, rollingRadius } from './fields.ts'
import { axleTorqueFrom } from './axleTorqueFrom.ts'
import { axleTorqueHeld } from './axleTorqueHeld.ts'
import { gearboxTorqueFrom } from './gearboxTorqueFrom.ts'
import { halfShaftTorqueFrom } from './halfShaftTorqueFrom.ts'
import { tyreLimit } from './tyreLimit.ts'

/** Torque along the driveline in first gear, where it is largest: through gearbox, differential and the busier half-shaft. */
export default calculation({
  id: 'driveline-torques',
  title: 'Torque along the driveline',
  theme: 'driveline',
  asks: 'What torque do gearbox, differential and half-shafts carry in first gear?',
  article: 'the-order-of-decisions',
  cautions: ['rotating-burst', 'lifting', 'model-only'],
  in: { torque: engine.torque, clutch: at.clutchCapacity, first: firstGear, finalDrive: axleRatio, efficiency, lock, grip, axleMass: drivenAxle, radius: rollingRadius, height: centre, wheelbase: base },
  out: { gearbox: at.gearboxTorque, differential: at.differentialTorque, halfShaft: at.halfShaftTorque },
  curve: ['torque', 'differential'],
  answer({ torque, clutch, first, finalDrive, efficiency, lock, grip, axleMass, radius, height, wheelbase }) {
    const gearbox = gearboxTorqueFrom({ torque, clutch })
    const limit = tyreLimit({ grip, axleMass, radius, height, wheelbase })
    if (!(limit > 0 && limit < Infinity)) throw new NoAnswer('tyres', 'With this grip and height the car would tip over backwards before its tyres slip: check grip, height and wheelbase.')
    const differential = axleTorqueHeld({ given: axleTorqueFrom({ torque: gearbox, ratio: first, finalDrive, efficiency }), held: limit })
    return { gearbox, differential, halfShaft: halfShaftTorqueFrom({ axle: differential, share: lock }) }
  },
  says: () => 'In first gear the gearbox takes {gearbox}, the differential gives {differential} and the busier half-shaft carries {halfShaft}, with the tyres as the fuse.',
  leavesOut: 'Shock: a clutch let in at speed asks its whole slip torque, and a wheel that spins and grips adds its inertia.',
})
