import { calculation } from '../calculation/calculation.ts'
import { engineEccentricity, engineRotorMass } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { compositeRoughness } from './compositeRoughness.ts'
import { density15, filmRatioWanted, journalRoughness, rotorClearance, rotorDiameter, rotorLength, shellRoughness } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmRatioOf } from './filmRatioOf.ts'
import { filmSpeed } from './filmSpeed.ts'
import { filmWanted } from './filmWanted.ts'
import { at } from './point.ts'
import { filmRatio, filmTemperature, rotorLoad } from './quantities.ts'
import { rotorInertiaLoad } from './rotorInertiaLoad.ts'
import { rotorTurning } from './rotorTurning.ts'
import { slidingSpeed } from './slidingSpeed.ts'

export default calculation({
  id: 'rotor-bearing-inertia', title: 'Rotor bearing under the rotor’s own inertia', theme: 'oil',
  asks: 'How thick is the film that holds the rotor at speed?',
  article: 'the-bearing-film-at-speed', cautions: ['rotating-burst', 'hot-oil', 'model-only'],
  in: {
    speed: engine.speed, mass: engineRotorMass, eccentricity: engineEccentricity, diameter: rotorDiameter, length: rotorLength, diametral: rotorClearance,
    journalRoughness, shellRoughness, ratioWanted: filmRatioWanted, supply: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, share: at.highShearShare,
  },
  out: { film: at.rotorInertiaFilm, wanted: at.rotorFilmWanted, load: rotorLoad, temperature: filmTemperature, overRoughness: filmRatio },
  curve: ['speed', 'film'],
  answer({ speed, mass, eccentricity, journalRoughness, shellRoughness, ratioWanted, ...bearing }) {
    const load = rotorInertiaLoad({ mass, eccentricity, speed })
    const shell = rotorTurning({ speed })
    const found = filmOfBearing({ ...bearing, load, filmSpeed: filmSpeed({ journal: speed, shell, load: speed }), slidingSpeed: slidingSpeed({ journal: speed, shell }) })
    const roughness = compositeRoughness({ journal: journalRoughness, shell: shellRoughness })
    return {
      film: found.thinnest, wanted: filmWanted({ roughness, ratio: ratioWanted }), load, temperature: found.temperature,
      overRoughness: filmRatioOf({ film: found.thinnest, roughness }),
    }
  },
  says: () => 'At {speed} the rotor pulls with {load}; the film is {film} thick and runs at {temperature}, {overRoughness} times the roughness of both surfaces.',
  leavesOut: 'Gas force, bending, misalignment, dirt, and the oil that supply pressure drives through on top.',
})
