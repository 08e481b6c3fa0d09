import { torque } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { driveEfficiency, finalDrive, gearRatio, roadForce, tyreRadius } from './quantities.ts'

/** Force of the driven wheels on the road from engine torque. `M i_g i_f η / r`, newton. */
export const about = {
  name: 'Force of the driven wheels',
  in: { torque, ratio: gearRatio, finalDrive, efficiency: driveEfficiency, radius: tyreRadius },
  out: role(roadForce, 'F_d', 'Force of the driven wheels'),
  equation: 'torque * ratio * finalDrive * efficiency / radius',
  source: ['gillespie-dynamics', 'chapter 2, tractive force at the ground'],
  notes: 'Torque at steady speed: what speeds up the engine’s own turning parts is counted in the equivalent mass.',
} as const satisfies About

export const driveForce = formula<typeof about>('drive-force', {}, ({ torque: of, ratio, finalDrive: axle, efficiency, radius }) => (of * ratio * axle * efficiency) / radius)
