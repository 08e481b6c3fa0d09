import { calculation, free } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { engineEccentricity, engineRotorMass } from './fields.ts'
import { at } from './point.ts'
import { rotorCouple as couple, rotorLoad as load, rotorSpacing, timesWeight } from './quantities.ts'
import { rotorCouple } from './rotorCouple.ts'
import { rotorLoad } from './rotorLoad.ts'
import { weightsOf } from './weightsOf.ts'

export default calculation({
  id: 'rotor-load', title: 'Load of the rotors on the shaft', theme: 'engine', article: 'balance-and-matched-marks', cautions: ['rotating-burst', 'model-only'],
  asks: 'How hard do the rotors pull on the shaft, and what couple must the counterweights take up?',
  in: { speed: at.speed, mass: engineRotorMass, eccentricity: engineEccentricity, spacing: free(rotorSpacing, mm(130)) },
  out: { load, weights: timesWeight, couple },
  curve: ['speed', 'load'],
  answer({ speed, mass, eccentricity, spacing }) {
    const pull = rotorLoad({ mass, eccentricity, speed })
    return { load: pull, weights: weightsOf({ load: pull, mass }), couple: rotorCouple({ load: pull, spacing }) }
  },
  says: () => 'At {speed} each rotor pulls on its journal with {load}, {weights} times its own weight. Two of them, half a turn apart and {spacing} from middle to middle, leave no force on the shaft but a couple of {couple}, which the counterweights take up. A rotor of another mass asks counterweights of its own.',
  leavesOut: 'Gas load, oil held in the rotor, and bending of the shaft.',
})
