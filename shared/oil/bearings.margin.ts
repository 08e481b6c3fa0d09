import { margin } from '../build/margin.ts'
import { engineRotorMass, engineSpeedLimit } from '../engine/fields.ts'
import { fuelInOil, mainClearance, mainDiameter, offset, pressureRise, rotorClearance, rotorDiameter, rotorLength, spacing, thermostat } from './fields.ts'
import { at } from './point.ts'

const article = 'the-bearing-film-at-speed'

export default [
  margin({
    id: 'rotor-bearing-inertia', title: 'Rotor bearing film under inertia', theme: 'oil', article, over: 'sweep',
    demand: at.rotorFilmWanted, capacity: at.rotorInertiaFilm, must: 'stay below', as: 'share', tight: 0.5, rests: [rotorClearance, rotorDiameter, rotorLength, engineRotorMass],
    remedies: [
      { field: rotorClearance, move: 'down', says: 'A closer rotor bearing.' },
      { field: engineSpeedLimit, move: 'down', says: 'A lower speed limit.' },
      { field: engineRotorMass, move: 'down', says: 'Lighter rotors.' },
    ],
    says: 'At {speed} the rotor’s inertia leaves a film of {capacity}; {demand} is wanted over the roughness of both surfaces: {margin}.',
    settle: 'Measure bore, fitted, and journal of each rotor, and enter the oil’s viscosities from its data sheet.',
  }),
  margin({
    id: 'rotor-bearing-gas', title: 'Rotor bearing film at peak gas load', theme: 'oil', article, over: 'sweep',
    demand: at.rotorFilmWanted, capacity: at.rotorGasFilm, must: 'stay below', as: 'share', tight: 0.5, best: 'tight', rests: [rotorClearance, pressureRise],
    remedies: [
      { field: pressureRise, move: 'down', says: 'A lower peak: later ignition, or fuel that allows less boost for the same work.' },
      { field: rotorClearance, move: 'down', says: 'A closer rotor bearing.' },
      { field: fuelInOil, move: 'down', says: 'Fresher oil with less fuel in it.' },
    ],
    says: 'Steady estimate: at {speed} the gas peak would leave {capacity} of film where {demand} is wanted: {margin}. The peak is short, so the true film is thicker.',
    settle: 'A chamber pressure trace of one full-load pull gives the peak; the shells show at the next opening.',
  }),
  margin({
    id: 'main-bearing-film', title: 'Main bearing film', theme: 'oil', article, over: 'sweep',
    demand: at.mainFilmWanted, capacity: at.mainFilm, must: 'stay below', as: 'share', tight: 0.5, best: 'tight', rests: [spacing, offset, mainClearance, mainDiameter],
    remedies: [
      { field: mainClearance, move: 'down', says: 'Closer main bearings.' },
      { field: pressureRise, move: 'down', says: 'A lower peak pressure: later ignition or less boost.' },
      { field: thermostat, move: 'down', says: 'Cooler oil at part load.' },
    ],
    says: 'Steady estimate: at {speed} a main bearing runs on {capacity} at the gas peak where {demand} is wanted: {margin}. Bending and unbalance come on top.',
    settle: 'Measure the distance between the main bearings and from each to the rotor beside it.',
  }),
]
