import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { apexPathPerTurn } from './apexPathPerTurn.ts'
import { apexSealMeanSpeed } from './apexSealMeanSpeed.ts'
import { apexSealSpeedRange } from './apexSealSpeedRange.ts'
import { engineEccentricity, engineGeneratingRadius, engineRotorMass, engineShift } from './fields.ts'
import { at } from './point.ts'
import { rotorLoad as rotorLoadOf, sealSpeed } from './quantities.ts'
import { rotorLoad } from './rotorLoad.ts'

export default calculation({
  id: 'apex-seal-speed', title: 'Apex seal speed and rotor load', theme: 'engine', article: 'shaft-speed-limits', cautions: ['rotating-burst', 'model-only'],
  asks: 'How fast do the apex seals slide, and how hard does each rotor pull on its journal?',
  in: { speed: at.speed, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, shift: engineShift, mass: engineRotorMass },
  out: { highest: at.sealSpeed, lowest: role(sealSpeed, 'v_min', 'Lowest sliding speed'), mean: role(sealSpeed, 'v_m', 'Mean sliding speed'), load: rotorLoadOf },
  curve: ['speed', 'highest'],
  answer({ speed, generatingRadius, eccentricity, shift, mass }) {
    const { highest, lowest } = apexSealSpeedRange({ generatingRadius, eccentricity, shift, speed })
    return { highest, lowest, mean: apexSealMeanSpeed({ perTurn: apexPathPerTurn({ generatingRadius, eccentricity, shift }), speed }), load: rotorLoad({ mass, eccentricity, speed }) }
  },
  says: () => 'At {speed} an apex seal slides at {mean} on average, {highest} across the long axis and {lowest} at the waist, and each rotor pulls on its journal with {load}. Load grows with the square of speed: half as fast again is more than twice the pull.',
  leavesOut: 'Bounce of the seal, gas behind it, and gas load on the rotor.',
})
