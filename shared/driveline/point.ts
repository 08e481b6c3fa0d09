import { pointValue } from '../build/pointValue.ts'
import { axleTorque, clutchTorque, gearboxTorque, wheelTorque } from './quantities.ts'

/** What the driveline is asked, and what the clutch holds, at one shaft speed. */
export const at = {
  clutchCapacity: pointValue('driveline.clutchCapacity', clutchTorque, 'Torque the clutch holds'),
  gearboxTorque: pointValue('driveline.gearboxTorque', gearboxTorque),
  differentialTorque: pointValue('driveline.differentialTorque', axleTorque, 'Torque of the differential'),
  halfShaftTorque: pointValue('driveline.halfShaftTorque', wheelTorque),
} as const
