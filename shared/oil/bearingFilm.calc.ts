import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { percent, rpm } from '../quantity/si.ts'
import { density15, rotorClearance, rotorDiameter, rotorLength } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { at } from './point.ts'
import { bearingLoad, bearingPressure, bearingSpeed, filmTemperature, filmThickness, frictionPower, highShearShare, oilFlow, oilRise, sommerfeldNumber } from './quantities.ts'
import { slidingSpeed } from './slidingSpeed.ts'
import { trumplerFilm } from './trumplerFilm.ts'

export default calculation({
  id: 'bearing-film', title: 'Film of a journal bearing', theme: 'oil',
  asks: 'What film does a loaded bearing run on, how warm and at what loss?',
  article: 'the-bearing-film-at-speed', cautions: ['hot-oil', 'model-only'],
  in: {
    load: free(bearingLoad, 30e3), journal: free(bearingSpeed, rpm(7000), 'Journal speed'), shell: free(bearingSpeed, 0, 'Shell speed'), turning: free(bearingSpeed, 0, 'Speed at which the load turns'),
    diameter: rotorDiameter, length: rotorLength, diametral: rotorClearance, supply: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15,
    share: free(highShearShare, percent(88)),
  },
  out: {
    film: filmThickness, general: role(filmThickness, 'h_T', 'General guidance for running film'), pressure: bearingPressure, number: sommerfeldNumber, temperature: filmTemperature, rise: oilRise, power: frictionPower, drawn: oilFlow,
  },
  curve: ['load', 'film'],
  answer({ load, journal, shell, turning, ...bearing }) {
    const found = filmOfBearing({ ...bearing, load, filmSpeed: filmSpeed({ journal, shell, load: turning }), slidingSpeed: slidingSpeed({ journal, shell }) })
    return {
      film: found.thinnest, general: trumplerFilm({ diameter: bearing.diameter }), pressure: found.pressure, number: found.sommerfeld,
      temperature: found.temperature, rise: found.rise, power: found.power, drawn: found.drawn,
    }
  },
  says: () => 'The film is {film} at its thinnest and runs at {temperature}; the bearing turns {power} into heat. General machinery is designed for {general}: for scale, not a limit.',
  leavesOut: 'Bending, misalignment, changing load, heat through the metal and oil driven through by supply pressure.',
})
