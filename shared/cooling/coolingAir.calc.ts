import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { airCapacityRate } from './airCapacityRate.ts'
import { coreAirFlow } from './coreAirFlow.ts'
import { carSpeed, coreDrop, coreExponent, coverage, fanFreeFlow, fanShutOff, frontDrop, radiatorAirFlow, radiatorAirTemperature, ramRecovery, sustainedShare } from './fields.ts'
import { at } from './point.ts'
import { ramPressureOf } from './quantities.ts'
import { ramPressure } from './ramPressure.ts'
import { ratingAirDensity } from './ratingAirDensity.ts'
import { stackDrop } from './stackDrop.ts'
import { sustainedHeat } from './sustainedHeat.ts'
import { warmedAir } from './warmedAir.ts'

/** Air through the stack of coolers, and how warm it meets the radiator. */
export default calculation({
  id: 'cooling-air',
  title: 'Air through the core',
  theme: 'cooling',
  asks: 'How much air passes the radiator, and how warm does it arrive?',
  article: 'air-through-the-core',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    carSpeed, ramRecovery, shutOff: fanShutOff, freeFlow: fanFreeFlow, coreDrop, frontDrop, coverage, exponent: coreExponent,
    ratedAir: radiatorAirFlow, ratedAirTemperature: radiatorAirTemperature, pressure: siteAirPressure, temperature: siteAirTemperature,
    chargeCooler: at.chargeCoolerHeat, share: sustainedShare,
  },
  out: { ram: ramPressureOf, air: at.coreAirFlow, airTemperature: at.coreAirTemperature },
  curve: ['carSpeed', 'air'],
  answer({ carSpeed, ramRecovery, shutOff, freeFlow, coreDrop, frontDrop, coverage, exponent, ratedAir, ratedAirTemperature, pressure, temperature, chargeCooler, share }) {
    const density = gasDensity({ pressure, temperature })
    const ram = ramPressure({ density, speed: carSpeed, recovery: ramRecovery })
    const rated = stackDrop({ radiator: coreDrop, front: frontDrop, coverage })
    const air = coreAirFlow({ ram, shutOff, freeFlow, rated, ratedAir, exponent, density, ratedDensity: ratingAirDensity({ temperature: ratedAirTemperature }) })
    const airTemperature = warmedAir({ outside: temperature, heat: sustainedHeat({ full: chargeCooler, share }), coverage, air: airCapacityRate({ air }) })
    return { ram, air, airTemperature }
  },
  says: ({ air, ratedAir }) => air < ratedAir
    ? 'At {carSpeed} only {air} of air passes, less than the {ratedAir} of the rating, and it meets the radiator at {airTemperature}.'
    : 'At {carSpeed} {air} of air passes the core and meets the radiator at {airTemperature}.',
  leavesOut: 'side wind, a car close ahead, blocked fins and humid air',
})
