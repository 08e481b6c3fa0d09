import { calculation, free } from '../calculation/calculation.ts'
import { cm2, cm3, mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { speedOfSound } from '../media/speedOfSound.ts'
import { coupledFrequencies } from './coupledFrequencies.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { engineCompressionRatio, engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineRotors, engineShift, engineWidth } from './fields.ts'
import { helmholtzFrequency } from './helmholtzFrequency.ts'
import { at } from './point.ts'
import { pulseSpeed } from './pulseSpeed.ts'
import { ductArea, ductLength, resonatorVolume, shaftSpeed, tunedFrequency } from './quantities.ts'
import { tuningVolume } from './tuningVolume.ts'

export default calculation({
  id: 'plenum-resonance', title: 'Resonance of runner and plenum', theme: 'engine', article: 'the-path-in', cautions: ['model-only'],
  asks: 'At which shaft speeds do plenum and runners swing with the intake pulses?',
  in: {
    plenum: free(resonatorVolume, cm3(2500), 'Plenum volume'), feedLength: free(ductLength, mm(600), 'Length of the pipe that feeds the plenum'), feedArea: free(ductArea, cm2(40), 'Flow area of that pipe'),
    runnerLength: free(ductLength, mm(300), 'Length of a runner, port included'), runnerArea: free(ductArea, cm2(16), 'Flow area of a runner'), charge: at.charge, rotors: engineRotors,
    compressionRatio: engineCompressionRatio, describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift,
    stated: engineDisplacement,
  },
  out: {
    lowSpeed: role(shaftSpeed, 'n_1', 'Shaft speed of the lower resonance'), highSpeed: role(shaftSpeed, 'n_2', 'Shaft speed of the upper resonance'),
    low: role(tunedFrequency, 'f_1', 'Lower frequency, mostly the plenum on its pipe'), high: role(tunedFrequency, 'f_2', 'Upper frequency, mostly the chamber on its runner'),
    alone: role(tunedFrequency, 'f_0', 'Plenum on its pipe, runners shut'),
  },
  curve: ['plenum', 'lowSpeed'],
  answer({ plenum, feedLength, feedArea, runnerLength, runnerArea, charge, rotors, compressionRatio, ...description }) {
    const soundSpeed = speedOfSound({ temperature: charge })
    const chamber = tuningVolume({ displacement: describedDisplacement(description), compressionRatio })
    const { low, high } = coupledFrequencies({ soundSpeed, chamber, runnerArea, runnerLength, plenum, feedArea, feedLength })
    return {
      lowSpeed: pulseSpeed({ frequency: low, rotors }), highSpeed: pulseSpeed({ frequency: high, rotors }), low, high,
      alone: helmholtzFrequency({ soundSpeed, area: feedArea, length: feedLength, volume: plenum }),
    }
  },
  says: () => 'Plenum and runners swing together at {low} and {high}. The pulses of {rotors} rotors come as often at {lowSpeed} and {highSpeed}: near those speeds filling changes, and the rotors may fill unevenly. A larger plenum or a longer pipe brings the lower one down.',
  leavesOut: 'Friction, the second rotor’s open port, waves along the pipes, and boost control, which hides most of it. It compares layouts and promises no torque.',
})
