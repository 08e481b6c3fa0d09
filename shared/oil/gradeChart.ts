import { NoAnswer } from '../calculation/calculation.ts'
import { untraced } from '../formula/trace.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { oilInSump } from './oilInSump.ts'
import { opposedLoad } from './opposedLoad.ts'
import { rotorInertiaLoad } from './rotorInertiaLoad.ts'
import { rotorTurning } from './rotorTurning.ts'
import { slidingSpeed } from './slidingSpeed.ts'

/** What a chart of grades is asked for: bearing, loads, oil temperature, and the grid to fill. */
export type ChartAsked = {
  readonly grades: readonly string[]; readonly clearances: readonly number[]; readonly speeds: readonly number[]
  readonly supply: number; readonly index: number; readonly density15: number; readonly mass: number; readonly eccentricity: number; readonly diameter: number; readonly length: number
  /** Force of the gas peak on the rotor. */
  readonly gasLoad: number
}
/** One place of the chart: films of the thinnest oil that may carry the grade; null where there is none. Clearances are diametral. */
export type ChartCell = { readonly grade: string; readonly clearance: number; readonly speed: number; readonly inertia: number | null; readonly gas: number | null }

/** Grade by clearance by speed: the film of each under inertia and at the gas peak. */
export function gradeChart({ grades, clearances, speeds, supply, index, density15, mass, eccentricity, diameter, length, gasLoad }: ChartAsked): readonly ChartCell[] {
  return untraced(() => grades.flatMap((grade) => {
    const { viscosity40, viscosity100, share } = oilInSump({ grade, own40: null, own100: null, ownHighShear: null, index, density15, dilution: 0 })
    return clearances.flatMap((clearance) => speeds.map((speed): ChartCell => {
      const inertiaLoad = rotorInertiaLoad({ mass, eccentricity, speed })
      const shell = rotorTurning({ speed })
      const film = (load: number, turning: number): number | null => {
        try {
          return filmOfBearing({ load, diameter, length, diametral: clearance, filmSpeed: filmSpeed({ journal: speed, shell, load: turning }), slidingSpeed: slidingSpeed({ journal: speed, shell }), supply, viscosity40, viscosity100, density15, share }).thinnest
        } catch (error) { if (error instanceof NoAnswer || error instanceof RangeError) return null; throw error }
      }
      return { grade, clearance, speed, inertia: film(inertiaLoad, speed), gas: film(opposedLoad({ gas: gasLoad, inertia: inertiaLoad }), 0) }
    }))
  }))
}
