import { pointValue } from '../build/pointValue.ts'
import {
  dynamicViscosity, filmThickness, highShearShare, oilFlow, oilPressure, oilTemperature, sealDose, sealDoseRatio, waltherIntercept, waltherSlope,
} from './quantities.ts'

/** What the solved point says about oil at one shaft speed. */
export const at = {
  oilTemperature: pointValue('oil.temperature', oilTemperature, 'Oil temperature, sustained'),
  viscosity: pointValue('oil.viscosity', dynamicViscosity, 'Film viscosity at oil temperature'),
  lineA: pointValue('oil.lineA', waltherIntercept),
  lineB: pointValue('oil.lineB', waltherSlope),
  highShearShare: pointValue('oil.highShearShare', highShearShare),
  rotorFilmWanted: pointValue('oil.rotorFilmWanted', filmThickness, 'Film wanted in the rotor bearing'),
  rotorInertiaFilm: pointValue('oil.rotorInertiaFilm', filmThickness, 'Film under the rotor’s inertia'),
  rotorGasFilm: pointValue('oil.rotorGasFilm', filmThickness, 'Film at peak gas load, steady estimate'),
  mainFilmWanted: pointValue('oil.mainFilmWanted', filmThickness, 'Film wanted in the main bearing'),
  mainFilm: pointValue('oil.mainFilm', filmThickness, 'Film in the main bearing, steady estimate'),
  shaftPressureAsked: pointValue('oil.shaftPressureAsked', oilPressure, 'Pressure the shaft asks'),
  gaugePressure: pointValue('oil.gaugePressure', oilPressure, 'Oil pressure in the gallery'),
  oilFlow: pointValue('oil.flow', oilFlow, 'Oil that the engine takes'),
  sealDose: pointValue('oil.sealDose', sealDose),
  sealDoseRatio: pointValue('oil.sealDoseRatio', sealDoseRatio),
} as const
