import { calculation } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { airDensity, densityAltitudeOf, dryPressure, vapourPressureOfWater } from '../media/quantities.ts'
import { densityAltitude } from '../media/densityAltitude.ts'
import { enhancementFactor } from '../media/enhancementFactor.ts'
import { moistAirDensity } from '../media/moistAirDensity.ts'
import { saturatedShare } from '../media/saturatedShare.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { dryAirPressure } from './dryAirPressure.ts'
import { siteAirPressure, siteAirTemperature, siteHumidity } from './fields.ts'
import { gasDensity } from './gasDensity.ts'

export default calculation({
  id: 'moist-air-and-density-altitude', title: 'Weather at the engine', theme: 'engine', article: 'air-altitude-and-weather', cautions: ['model-only'],
  asks: 'How dense is the air today, how much of it is dry, and what altitude does it amount to?',
  in: { airPressure: siteAirPressure, airTemperature: siteAirTemperature, humidity: siteHumidity },
  out: { density: airDensity, dryDensity: role(airDensity, 'ρ_d', 'Density of the dry part'), dry: dryPressure, vapour: vapourPressureOfWater, altitude: densityAltitudeOf },
  curve: ['airTemperature', 'density'],
  answer({ airPressure, airTemperature, humidity }) {
    const saturation = saturationPressure({ temperature: airTemperature })
    const real = saturatedShare({ humidity, enhancement: enhancementFactor({ pressure: airPressure, temperature: airTemperature }), saturation, pressure: airPressure })
    const density = moistAirDensity({ pressure: airPressure, temperature: airTemperature, share: real })
    const vapour = vapourPressure({ humidity, saturation })
    const dry = dryAirPressure({ pressure: airPressure, share: vapourShare({ vapourPressure: vapour, pressure: airPressure }) })
    return { density, dryDensity: gasDensity({ pressure: dry, temperature: airTemperature }), dry, vapour, altitude: densityAltitude({ density }) }
  },
  says: () => 'This air weighs {density}, as in the standard atmosphere at {altitude}. Of its pressure {vapour} is water vapour, which brings no oxygen: {dryDensity} of dry air is left to burn fuel with.',
  leavesOut: 'Heat picked up under the bonnet; droplets of rain or fog.',
})
