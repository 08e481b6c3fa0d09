import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { boltDiameter, boltPreload, boltTorque, propertyClass, proofShare, threadPitch, tighteningMethod, torqueFactor } from './quantities.ts'
import { preloadBand } from './preloadBand.ts'
import { preloadFromTorque } from './preloadFromTorque.ts'
import { preloadScatterOf } from './preloadScatterOf.ts'
import { proofStressOf } from './proofStressOf.ts'
import { shareOfProof } from './shareOfProof.ts'
import { threadStressArea } from './threadStressArea.ts'

export default calculation({
  id: 'bolt-preload',
  title: 'Preload of a bolt and its scatter',
  theme: 'driveline',
  asks: 'What preload does this torque give, and how far may it miss?',
  article: 'fasteners-and-preload',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    torque: free(boltTorque, 65), diameter: free(boltDiameter, mm(10)), pitch: free(threadPitch, mm(1.25)), factor: free(torqueFactor, 0.18),
    method: free(tighteningMethod, 'torque-oiled'), class: free(propertyClass, '10.9'),
  },
  out: { preload: boltPreload, least: role(boltPreload, 'F_min', 'Least preload'), most: role(boltPreload, 'F_max', 'Most preload'), used: proofShare },
  curve: ['factor', 'preload'],
  answer({ torque, diameter, pitch, factor, method, class: propertyClass }) {
    const preload = preloadFromTorque({ torque, factor, diameter })
    const { least, most } = preloadBand({ preload, scatter: preloadScatterOf({ method }) })
    return { preload, least, most, used: shareOfProof({ preload: most, proof: proofStressOf({ propertyClass, diameter }), area: threadStressArea({ diameter, pitch }) }) }
  },
  says: () => '{torque} gives {preload}, somewhere between {least} and {most}; the most is {used} of the proof load. Friction decides: the same torque on another oil is another preload.',
  leavesOut: 'Settling, heat, torsion left from tightening, and the load on the joint. The maker’s torque and oil come first.',
})
