import { calculation, free } from '../calculation/calculation.ts'
import { engineEccentricity, engineRotorMass } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { mm } from '../quantity/si.ts'
import { density15, rotorClearance, rotorDiameter, rotorLength } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { at } from './point.ts'
import { projectedPressure } from './projectedPressure.ts'
import { diametralClearance, dynamicViscosity, filmThickness, viscosityAt100, viscosityScale } from './quantities.ts'
import { radialFromDiametral } from './radialFromDiametral.ts'
import { rotorInertiaLoad } from './rotorInertiaLoad.ts'
import { rotorTurning } from './rotorTurning.ts'
import { scaledShare } from './scaledShare.ts'
import { scaledViscosity } from './scaledViscosity.ts'
import { slendernessOf } from './slendernessOf.ts'
import { slidingSpeed } from './slidingSpeed.ts'
import { viscosityForFilm } from './viscosityForFilm.ts'

export default calculation({
  id: 'grade-and-clearance', title: 'Grade for a clearance', theme: 'oil',
  asks: 'If the clearance grows, how much thicker must the oil be for the same film?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'model-only'],
  in: {
    speed: engine.speed, mass: engineRotorMass, eccentricity: engineEccentricity, diameter: rotorDiameter, length: rotorLength, diametral: rotorClearance,
    other: free(diametralClearance, mm(0.08), 'The other clearance, diametral'), supply: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, share: at.highShearShare,
  },
  out: { film: filmThickness, unchanged: role(filmThickness, 'h_1', 'Film at the new clearance, same oil'), times: viscosityScale, viscosity: viscosityAt100, now: role(dynamicViscosity, 'η_1', 'Viscosity in the film now'), needed: role(dynamicViscosity, 'η_2', 'Viscosity in the film at the new clearance') },
  curve: ['other', 'times'],
  answer({ speed, mass, eccentricity, other, ...bearing }) {
    const shell = rotorTurning({ speed })
    const run = { ...bearing, load: rotorInertiaLoad({ mass, eccentricity, speed }), filmSpeed: filmSpeed({ journal: speed, shell, load: speed }), slidingSpeed: slidingSpeed({ journal: speed, shell }) }
    const { thinnest: film, viscosity: now } = filmOfBearing(run)
    const unchanged = filmOfBearing({ ...run, diametral: other }).thinnest
    const { diameter, length, viscosity100 } = bearing
    const times = viscosityForFilm({ ...run, wanted: film, pressure: projectedPressure({ load: run.load, diameter, length }), slenderness: slendernessOf({ length, diameter }), clearance: radialFromDiametral({ diametral: other }) })
    const needed = filmOfBearing({ ...run, diametral: other, share: scaledShare({ share: bearing.share, scale: times }) }).viscosity
    return { film, unchanged, times, viscosity: scaledViscosity({ viscosity: viscosity100, scale: times }), now, needed }
  },
  says: ({ times }) => `Film held: {film} under inertia at {speed}. At {other} the present oil would give {unchanged}; for the same film it must be {times} times as thick, {viscosity} at 100 °C, and have {needed} in its own warm film where {now} is there now${times > 1.25 ? ': a grade or more' : ''}.`,
  leavesOut: 'Oil that the supply pressure drives through cools a wider clearance further, and asks more of the pump.',
})
