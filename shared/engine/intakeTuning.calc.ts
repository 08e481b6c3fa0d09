import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { cm2, mm } from '../quantity/si.ts'
import { speedOfSound } from '../media/speedOfSound.ts'
import { closedPipeFrequency } from './closedPipeFrequency.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { engineCompressionRatio, engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineShift, engineWidth } from './fields.ts'
import { helmholtzFrequency } from './helmholtzFrequency.ts'
import { at } from './point.ts'
import { ductArea, ductLength, shaftSpeed, tunedFrequency, tuningFactor } from './quantities.ts'
import { tunedSpeed } from './tunedSpeed.ts'
import { tuningVolume } from './tuningVolume.ts'

export default calculation({
  id: 'intake-tuning', title: 'Intake runner tuning', theme: 'engine', article: 'the-path-in', cautions: ['model-only'],
  asks: 'At which shaft speed does a runner of this length and bore help the engine to fill?',
  in: {
    length: free(ductLength, mm(400), 'Length of the runner, port included'), area: free(ductArea, cm2(16), 'Flow area of the runner'), factor: free(tuningFactor, 2.1), charge: at.charge,
    compressionRatio: engineCompressionRatio, describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift,
    stated: engineDisplacement,
  },
  out: { speed: shaftSpeed, frequency: role(tunedFrequency, 'f_H', 'Resonance of runner and chamber'), pipe: role(tunedFrequency, 'f_p', 'Quarter wave of the pipe') },
  curve: ['length', 'speed'],
  answer({ length, area, factor, charge, compressionRatio, ...description }) {
    const soundSpeed = speedOfSound({ temperature: charge })
    const volume = tuningVolume({ displacement: describedDisplacement(description), compressionRatio })
    const frequency = helmholtzFrequency({ soundSpeed, area, length, volume })
    return { speed: tunedSpeed({ frequency, factor }), frequency, pipe: closedPipeFrequency({ soundSpeed, length }) }
  },
  says: () => 'Runner and chamber swing at {frequency}, which helps most near {speed}; while its port is shut the runner alone rings at {pipe}. The rule comes from piston engines: use it to compare lengths, not to promise torque.',
  leavesOut: 'Port timing, the plenum, the other rotor, and boost control, which hides much of the gain.',
})
