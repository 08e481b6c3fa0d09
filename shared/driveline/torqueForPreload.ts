import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltDiameter, boltPreload, boltTorque, headDiameter, headFriction, threadFriction, threadPitch } from './quantities.ts'

/**
 * Torque for a preload, taken apart into lifting along the thread, friction in the thread and friction under the head.
 * `F (0.16 P + 0.58 d2 μ_G + D_K μ_K / 2)`, newton metres, 60° threads.
 */
export const about = {
  name: 'Torque for a preload',
  in: { preload: boltPreload, pitch: threadPitch, pitchDiameter: role(boltDiameter, 'd_2', 'Pitch diameter'), thread: threadFriction, headDiameter, head: headFriction },
  out: boltTorque,
  equation: 'preload * (0.16 * pitch + 0.58 * pitchDiameter * thread + headDiameter * head / 2)',
  source: ['vdi-2230-1', 'tightening torque of bolts with 60° thread'],
  notes: 'Source states no range. Shows where the torque goes: a tenth or so stretches the bolt.',
} as const satisfies About

export const torqueForPreload = formula<typeof about>('torque-for-preload', {},
  ({ preload, pitch, pitchDiameter, thread, headDiameter, head }) => preload * (0.16 * pitch + 0.58 * pitchDiameter * thread + (headDiameter * head) / 2))
