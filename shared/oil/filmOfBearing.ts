import { NoAnswer } from '../calculation/calculation.ts'
import { filmFlow } from './filmFlow.ts'
import { filmFrictionTorque } from './filmFrictionTorque.ts'
import { frictionPowerOf } from './frictionPowerOf.ts'
import { loadedFilm } from './loadedFilm.ts'
import { minimumFilm } from './minimumFilm.ts'
import { projectedPressure } from './projectedPressure.ts'
import { radialFromDiametral } from './radialFromDiametral.ts'
import { slendernessOf } from './slendernessOf.ts'

/** A bearing as a sheet describes it, its load, speeds and oil. */
export type LoadedBearing = {
  readonly load: number; readonly diameter: number; readonly length: number; readonly diametral: number
  readonly filmSpeed: number; readonly slidingSpeed: number; readonly supply: number
  readonly viscosity40: number; readonly viscosity100: number; readonly density15: number; readonly share: number
}

/** From what a sheet says of a bearing to its film: the chain of formulas that every bearing calculation shares. */
export function filmOfBearing({ load, diameter, length, diametral, filmSpeed, slidingSpeed, ...oil }: LoadedBearing) {
  if (oil.viscosity100 >= oil.viscosity40) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
  if (!(filmSpeed > 0)) throw new NoAnswer('bearing', 'Nothing sweeps oil under the load: it turns at half the sum of journal and shell speed, or nothing turns.')
  const clearance = radialFromDiametral({ diametral })
  const pressure = projectedPressure({ load, diameter, length })
  const solved = loadedFilm({ pressure, slenderness: slendernessOf({ length, diameter }), diameter, clearance, filmSpeed, slidingSpeed, ...oil })
  const torque = filmFrictionTorque({ variable: solved.friction, clearance, load, filmSpeed, slidingSpeed })
  return {
    ...solved, pressure, clearance, torque,
    thinnest: minimumFilm({ share: solved.film, clearance }),
    power: frictionPowerOf({ torque, speed: slidingSpeed }),
    drawn: filmFlow({ variable: solved.flow, diameter, clearance, speed: filmSpeed, length }),
  }
}
