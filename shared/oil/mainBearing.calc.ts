import { calculation, optional } from '../calculation/calculation.ts'
import { engineGeneratingRadius, engineShift, engineWidth } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { compositeRoughness } from './compositeRoughness.ts'
import { density15, filmRatioWanted, journalRoughness, mainClearance, mainDiameter, mainLength, offset, peakPressure, pressureRise, shellRoughness, spacing } from './fields.ts'
import { filmOfBearing } from './filmOfBearing.ts'
import { filmSpeed } from './filmSpeed.ts'
import { filmWanted } from './filmWanted.ts'
import { flankAreaOf } from './flankAreaOf.ts'
import { gasLoad } from './gasLoad.ts'
import { mainLoad } from './mainLoad.ts'
import { mainShareOf } from './mainShareOf.ts'
import { peakPressureByRise } from './peakPressureByRise.ts'
import { at } from './point.ts'
import { bearingLoad, filmTemperature, mainLoadShare } from './quantities.ts'
import { slidingSpeed } from './slidingSpeed.ts'

export default calculation({
  id: 'main-bearing', title: 'Main bearing at peak gas load', theme: 'oil',
  asks: 'How thick is a main bearing’s film when the rotor beside it fires?',
  article: 'the-bearing-film-at-speed', cautions: ['knock', 'hot-oil', 'model-only'],
  in: {
    speed: engine.speed, manifold: engine.manifold, compression: engine.endPressure, measured: optional(peakPressure), rise: pressureRise,
    radius: engineGeneratingRadius, shift: engineShift, width: engineWidth, offset, spacing, diameter: mainDiameter, length: mainLength, diametral: mainClearance,
    journalRoughness, shellRoughness, ratioWanted: filmRatioWanted, supply: at.oilTemperature, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, share: at.highShearShare,
  },
  out: { film: at.mainFilm, wanted: at.mainFilmWanted, load: bearingLoad, part: mainLoadShare, temperature: filmTemperature },
  curve: ['speed', 'film'],
  answer({ speed, manifold, compression, measured, rise, radius, shift, width, offset, spacing, journalRoughness, shellRoughness, ratioWanted, ...bearing }) {
    const gas = gasLoad({ peak: measured ?? peakPressureByRise({ compression, rise }), others: manifold, area: flankAreaOf({ radius, shift, width }) })
    const part = mainShareOf({ offset, spacing })
    const load = mainLoad({ gas, share: part })
    const found = filmOfBearing({ ...bearing, load, filmSpeed: filmSpeed({ journal: speed, shell: 0, load: 0 }), slidingSpeed: slidingSpeed({ journal: speed, shell: 0 }) })
    const wanted = filmWanted({ roughness: compositeRoughness({ journal: journalRoughness, shell: shellRoughness }), ratio: ratioWanted })
    return { film: found.thinnest, wanted, load, part, temperature: found.temperature }
  },
  says: () => 'Steady estimate: at {speed} the nearer main bearing takes {part} of the gas load, {load}, on a film of {film}.',
  leavesOut: 'Bending of the shaft, residual unbalance, pull of belt and clutch, and squeeze, which thickens the true film.',
})
