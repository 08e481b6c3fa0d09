import { calculation, free } from '../calculation/calculation.ts'
import { gasPressure, gasTemperature } from '../boost/quantities.ts'
import { airDensity, geopotentialAltitude } from '../media/quantities.ts'
import { standardAtmosphere } from '../media/standardAtmosphere.ts'

export default calculation({
  id: 'standard-air-at-altitude', title: 'Standard air at an altitude', theme: 'engine', article: 'air-altitude-and-weather', cautions: ['model-only'],
  asks: 'What are usual pressure, temperature and density at this height?',
  in: { altitude: free(geopotentialAltitude, 500) },
  out: { pressure: gasPressure, temperature: gasTemperature, density: airDensity },
  curve: ['altitude', 'pressure'],
  answer({ altitude }) {
    const { pressure, temperature, density } = standardAtmosphere({ altitude })
    return { pressure, temperature, density }
  },
  says: () => 'At {altitude} the standard atmosphere has {pressure} and {temperature}, {density} of dry air. A barometer on the day is better than this.',
  leavesOut: 'The weather.',
})
