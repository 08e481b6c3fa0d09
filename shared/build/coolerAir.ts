import { coreAirFlow } from '../cooling/coreAirFlow.ts'
import { ramPressure } from '../cooling/ramPressure.ts'
import { ratingAirDensity } from '../cooling/ratingAirDensity.ts'
import { stackDrop } from '../cooling/stackDrop.ts'
import { airOverCooler } from '../boost/airOverCooler.ts'
import { coolerUnitsFrom } from '../boost/coolerUnitsFrom.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { type FieldValues } from './fieldValues.ts'

const paths = [
  'site.airPressure', 'site.airTemperature', 'cooling.carSpeed', 'cooling.ramRecovery', 'cooling.fan.shutOffPressure', 'cooling.fan.freeFlow', 'cooling.core.ratedDrop', 'cooling.core.frontDrop', 'cooling.core.coverage',
  'cooling.core.exponent', 'cooling.radiator.ratedAirFlow', 'cooling.radiator.ratedAirTemperature', 'boost.coolerRatedEffectiveness', 'boost.coolerRatedFlow',
] as const

/**
 * The cooling air that the charge cooler shares with the radiator behind it, where its rating says what air it was given. Null where the
 * sheet does not tell, where nothing moves air, or where the rating contradicts itself: the cooler’s own calculator says so then.
 */
export function coolerAirFrom(fields: FieldValues): { readonly units: number; readonly air: number; readonly rated: number } | null {
  const rated = fields.get('boost.coolerRatedAir')
  if (typeof rated !== 'number' || paths.some((path) => typeof fields.get(path) !== 'number')) return null
  const number = (path: (typeof paths)[number]): number => fields.get(path) as number
  const coverage = number('cooling.core.coverage')
  const density = gasDensity({ pressure: number('site.airPressure'), temperature: number('site.airTemperature') })
  try {
    const air = airOverCooler({
      coverage,
      air: coreAirFlow({
        ram: ramPressure({ density, speed: number('cooling.carSpeed'), recovery: number('cooling.ramRecovery') }), shutOff: number('cooling.fan.shutOffPressure'), freeFlow: number('cooling.fan.freeFlow'),
        rated: stackDrop({ radiator: number('cooling.core.ratedDrop'), front: number('cooling.core.frontDrop'), coverage }), ratedAir: number('cooling.radiator.ratedAirFlow'), exponent: number('cooling.core.exponent'), density,
        ratedDensity: ratingAirDensity({ temperature: number('cooling.radiator.ratedAirTemperature') }),
      }),
    })
    return air > 0 ? { units: coolerUnitsFrom({ effectiveness: number('boost.coolerRatedEffectiveness'), flow: number('boost.coolerRatedFlow'), air: rated }), air, rated } : null
  } catch (error) {
    if (error instanceof NoAnswer || error instanceof RangeError) return null
    throw error
  }
}
