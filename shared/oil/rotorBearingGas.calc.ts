import { calculation, optional } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { engineEccentricity, engineGeneratingRadius, engineRotorMass, engineShift, engineWidth } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { density15, peakPressure, pressureRise, rotorClearance, rotorDiameter, rotorLength } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { flankAreaOf } from './flankAreaOf.ts'
import { gasLoad } from './gasLoad.ts'
import { opposedLoad } from './opposedLoad.ts'
import { peakPressureByRise } from './peakPressureByRise.ts'
import { at } from './point.ts'
import { filmTemperature, peakGasPressure, rotorLoad } from './quantities.ts'
import { rotorInertiaLoad } from './rotorInertiaLoad.ts'
import { rotorTurning } from './rotorTurning.ts'
import { slidingSpeed } from './slidingSpeed.ts'

export default calculation({
  id: 'rotor-bearing-gas', title: 'Rotor bearing at peak gas load', theme: 'oil',
  asks: 'How thick is the rotor bearing’s film when the chamber pressure peaks?',
  article: 'the-bearing-film-at-speed', cautions: ['knock', 'hot-oil', 'model-only'],
  in: {
    speed: engine.speed, manifold: engine.manifold, compression: engine.endPressure, measured: optional(peakPressure), rise: pressureRise,
    radius: engineGeneratingRadius, shift: engineShift, width: engineWidth, mass: engineRotorMass, eccentricity: engineEccentricity,
    diameter: rotorDiameter, length: rotorLength, diametral: rotorClearance,
    supply: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, share: at.highShearShare,
  },
  out: { film: at.rotorGasFilm, gas: role(rotorLoad, 'F_g', 'Gas load'), left: role(rotorLoad, 'F_l', 'Gas load less inertia'), peak: peakGasPressure, temperature: filmTemperature },
  curve: ['speed', 'film'],
  answer({ speed, manifold, compression, measured, rise, radius, shift, width, mass, eccentricity, ...bearing }) {
    const peak = measured ?? peakPressureByRise({ compression, rise })
    const gas = gasLoad({ peak, others: manifold, area: flankAreaOf({ radius, shift, width }) })
    const left = opposedLoad({ gas, inertia: rotorInertiaLoad({ mass, eccentricity, speed }) })
    const shell = rotorTurning({ speed })
    const found = filmOfBearing({ ...bearing, load: left, filmSpeed: filmSpeed({ journal: speed, shell, load: 0 }), slidingSpeed: slidingSpeed({ journal: speed, shell }) })
    return { film: found.thinnest, gas, left, peak, temperature: found.temperature }
  },
  says: ({ measured }) => `Steady estimate: at {speed} a peak of {peak} pushes with {gas}, inertia leaves {left} of it, and the film would settle at {film}.${measured === null ? ' The peak is a guess from compression.' : ''}`,
  leavesOut: 'The peak lasts only some degrees and oil must first be squeezed out, so the true film is thicker; knock makes any peak higher.',
})
