import { pointValue } from '../build/pointValue.ts'
import {
  dynamicViscosity, filmThickness, highShearShare, oilFlow, oilPressure, oilTemperature, sealDose, sealDoseRatio, viscosityAt100, viscosityAt40,
} from './quantities.ts'

/** What the solved point says about oil at one shaft speed. */
export const at = {
  oilTemperature: pointValue('oil.temperature', oilTemperature, 'Oil temperature, sustained'),
  viscosity: pointValue('oil.viscosity', dynamicViscosity, 'Film viscosity at oil temperature'),
  viscosity40: pointValue('oil.sumpViscosity40', viscosityAt40, 'Oil in the sump at 40 °C'),
  viscosity100: pointValue('oil.sumpViscosity100', viscosityAt100, 'Oil in the sump at 100 °C'),
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
