import { calculation, optional } from '../calculation/calculation.ts'
import { engineEccentricity, engineGeneratingRadius, engineRotorMass, engineShift, engineWidth } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { compositeRoughness } from './compositeRoughness.ts'
import { density15, filmRatioWanted, journalRoughness, peakPressure, pressureRise, rotorClearance, rotorDiameter, rotorLength, shellRoughness } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { filmViscosity } from './filmViscosity.ts'
import { filmWanted } from './filmWanted.ts'
import { flankAreaOf } from './flankAreaOf.ts'
import { gasLoad } from './gasLoad.ts'
import { gradeCarrying } from './gradeCarrying.ts'
import { opposedLoad } from './opposedLoad.ts'
import { peakPressureByRise } from './peakPressureByRise.ts'
import { at } from './point.ts'
import { projectedPressure } from './projectedPressure.ts'
import { filmThickness, highShearViscosity, hotGrade, viscosityAt100 } from './quantities.ts'
import { radialFromDiametral } from './radialFromDiametral.ts'
import { rotorInertiaLoad } from './rotorInertiaLoad.ts'
import { rotorTurning } from './rotorTurning.ts'
import { scaledHighShear } from './scaledHighShear.ts'
import { scaledViscosity } from './scaledViscosity.ts'
import { slendernessOf } from './slendernessOf.ts'
import { slidingSpeed } from './slidingSpeed.ts'
import { thickerOf } from './thickerOf.ts'
import { timesForFilm } from './timesForFilm.ts'
import { trumplerFilm } from './trumplerFilm.ts'
import { viscosityAt150 } from './viscosityAt150.ts'

export default calculation({
  id: 'oil-for-clearance', title: 'What oil for my clearance', theme: 'oil',
  asks: 'Which viscosity, and which grade, holds the wanted film in my rotor bearings at this clearance, oil temperature and speed?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'knock', 'model-only'],
  in: {
    diametral: rotorClearance, supply: at.oilTemperature, speed: engine.speed, manifold: engine.manifold, compression: engine.endPressure, measured: optional(peakPressure), rise: pressureRise,
    radius: engineGeneratingRadius, shift: engineShift, width: engineWidth, mass: engineRotorMass, eccentricity: engineEccentricity, diameter: rotorDiameter, length: rotorLength,
    journalRoughness, shellRoughness, ratio: filmRatioWanted, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, share: at.highShearShare,
  },
  out: {
    wanted: role(filmThickness, 'h_w', 'Film wanted in the rotor bearing'), inertia: role(filmThickness, 'h_i', 'Film under inertia, oil as it is'), gas: role(filmThickness, 'h_g', 'Film at the gas peak, steady estimate, oil as it is'),
    forInertia: role(viscosityAt100, 'ν_i', 'Viscosity at 100 °C asked under inertia'), forGas: role(viscosityAt100, 'ν_g', 'Viscosity at 100 °C asked at the gas peak'), asked: role(viscosityAt100, 'ν_w', 'Viscosity at 100 °C asked'),
    highShear: role(highShearViscosity, 'η_w', 'High-shear viscosity asked'), number: role(hotGrade, 'SAE_w', 'Hot number that carries it'),
    guide: role(filmThickness, 'h_T', 'Film by general-machinery guidance'), guided: role(viscosityAt100, 'ν_T', 'Viscosity at 100 °C for that film'),
  },
  curve: ['diametral', 'asked'],
  mayLack: ['number'],
  answer({ speed, manifold, compression, measured, rise, radius, shift, width, mass, eccentricity, journalRoughness: journal, shellRoughness: shellRough, ratio, ...bearing }) {
    const wanted = filmWanted({ roughness: compositeRoughness({ journal, shell: shellRough }), ratio })
    const inertiaLoad = rotorInertiaLoad({ mass, eccentricity, speed })
    const gasOnly = gasLoad({ peak: measured ?? peakPressureByRise({ compression, rise }), others: manifold, area: flankAreaOf({ radius, shift, width }) })
    const left = opposedLoad({ gas: gasOnly, inertia: inertiaLoad })
    const shell = rotorTurning({ speed })
    const sliding = slidingSpeed({ journal: speed, shell })
    const { diametral, diameter, length, viscosity40, viscosity100, density15, share } = bearing
    const loaded = (load: number, turning: number) => {
      const run = { ...bearing, load, filmSpeed: filmSpeed({ journal: speed, shell, load: turning }), slidingSpeed: sliding }
      return {
        film: filmOfBearing(run).thinnest,
        times: (film: number) => timesForFilm({ ...run, wanted: film, pressure: projectedPressure({ load, diameter, length }), slenderness: slendernessOf({ length, diameter }), clearance: radialFromDiametral({ diametral }) }),
      }
    }
    const held = loaded(inertiaLoad, speed), pushed = loaded(left, 0)
    const [heldTimes, pushedTimes] = [held.times(wanted), pushed.times(wanted)]
    const times = thickerOf({ one: heldTimes, other: pushedTimes })
    const guide = trumplerFilm({ diameter })
    const guided = scaledViscosity({ viscosity: viscosity100, scale: thickerOf({ one: held.times(guide), other: pushed.times(guide) }) })
    const asked = scaledViscosity({ viscosity: viscosity100, scale: times })
    return {
      wanted, inertia: held.film, gas: pushed.film, forInertia: scaledViscosity({ viscosity: viscosity100, scale: heldTimes }), forGas: scaledViscosity({ viscosity: viscosity100, scale: pushedTimes }), asked,
      highShear: scaledHighShear({ viscosity: filmViscosity({ lowShear: viscosityAt150({ viscosity40, viscosity100, density15 }), share }), scale: times }), number: gradeCarrying({ viscosity100: asked }), guide, guided,
    }
  },
  says: ({ number, guided, forInertia, forGas }) => `At {diametral} and {supply}, the {wanted} that clear the roughness want {asked} at 100 °C in the sump, fuel included: ${carried(number)}. The {guide} that general machinery is given would want {guided}: ${carried(gradeCarrying({ viscosity100: guided }))}. The choice lies between the two, and heat, cold starts and oil pressure bound it. ${forGas > forInertia ? 'The gas peak, a steady estimate, asks more than inertia.' : 'Inertia asks more than the gas peak.'} With the oil as it is the film is {inertia} under inertia and {gas} at the peak.`,
  leavesOut: 'The gas peak lasts some degrees only, so its true film is thicker; bending, dirt and running-in want more. Grades above 40 may have the same high-shear viscosity: the data sheet decides, not the number.',
})

/** The grade that carries a viscosity, in words. */
function carried(number: number): string {
  if (Number.isNaN(number)) return 'more than any grade has to have'
  return number <= 20 ? 'every usual grade has that' : `an SAE ${number} has that`
}
