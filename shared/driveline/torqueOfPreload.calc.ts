import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { boltDiameter, boltPreload, boltTorque, headDiameter, headFriction, threadFriction, threadPitch, torqueFactor } from './quantities.ts'
import { torqueFactorOf } from './torqueFactorOf.ts'
import { torqueForPreload } from './torqueForPreload.ts'

export default calculation({
  id: 'torque-of-preload',
  title: 'Torque for a wanted preload',
  theme: 'driveline',
  asks: 'What torque brings a bolt to a wanted preload, with these frictions?',
  article: 'fasteners-and-preload',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    preload: free(boltPreload, 30000), diameter: free(boltDiameter, mm(10)), pitch: free(threadPitch, mm(1.5)), pitchDiameter: free(boltDiameter, mm(9.026), 'Pitch diameter'),
    thread: free(threadFriction, 0.12), headDiameter: free(headDiameter, mm(12.8)), head: free(headFriction, 0.12),
  },
  out: { torque: boltTorque, factor: torqueFactor },
  curve: ['head', 'torque'],
  answer({ preload, diameter, pitch, pitchDiameter, thread, headDiameter, head }) {
    const torque = torqueForPreload({ preload, pitch, pitchDiameter, thread, headDiameter, head })
    return { torque, factor: torqueFactorOf({ torque, preload, diameter }) }
  },
  says: () => '{preload} takes {torque}, a torque factor of {factor}. Most of it is friction: change the oil and the same torque is another preload.',
  leavesOut: 'Scatter of friction from bolt to bolt, and nuts that lock.',
})
