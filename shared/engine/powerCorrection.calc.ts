import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { dryPressure } from '../media/quantities.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { kW } from '../quantity/si.ts'
import { correctedPower } from './correctedPower.ts'
import { dryAirPressure } from './dryAirPressure.ts'
import { siteAirPressure, siteAirTemperature, siteHumidity } from './fields.ts'
import { isoCorrection } from './isoCorrection.ts'
import { power, powerCorrection } from './quantities.ts'
import { saeCorrection } from './saeCorrection.ts'

export default calculation({
  id: 'power-correction', title: 'Power corrected to standard air', theme: 'engine', article: 'air-altitude-and-weather', cautions: ['model-only'],
  asks: 'What would this measured power be in standard air?',
  in: { measured: free(power, kW(250), 'Measured power'), airPressure: siteAirPressure, airTemperature: siteAirTemperature, humidity: siteHumidity },
  out: { dry: dryPressure, sae: role(powerCorrection, 'α_S', 'Factor of SAE J1349'), iso: role(powerCorrection, 'α_I', 'Factor of ISO 1585'), saePower: role(power, 'P_S', 'Power by SAE J1349'), isoPower: role(power, 'P_I', 'Power by ISO 1585') },
  curve: ['airTemperature', 'saePower'],
  answer({ measured, airPressure, airTemperature, humidity }) {
    const share = vapourShare({ vapourPressure: vapourPressure({ humidity, saturation: saturationPressure({ temperature: airTemperature }) }), pressure: airPressure })
    const dry = dryAirPressure({ pressure: airPressure, share })
    const sae = saeCorrection({ dryPressure: dry, temperature: airTemperature })
    const iso = isoCorrection({ dryPressure: dry, temperature: airTemperature })
    return { dry, sae, iso, saePower: correctedPower({ power: measured, factor: sae }), isoPower: correctedPower({ power: measured, factor: iso }) }
  },
  says: ({ sae }) => (sae > 1.07 || sae < 0.93
    ? 'The factor would be {sae}: farther from one than either standard allows, so wait for better weather rather than multiply.'
    : 'SAE J1349 gives a factor of {sae} and {saePower}, ISO 1585 {iso} and {isoPower}. An engine whose boost is held by absolute pressure has already made up for the weather; do not correct it twice.'),
  leavesOut: 'Fuel, charge-air and exhaust conditions that the standards also prescribe; losses of the driveline.',
})
