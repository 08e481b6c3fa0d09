import { type About, formula } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { role } from '../quantity/quantity.ts'
import { loadedFilm } from './loadedFilm.ts'
import { bearingPressure, bearingSpeed, filmThickness, highShearShare, journalDiameter, oilDensity, oilTemperature, radialClearance, slenderness, viscosityAt100, viscosityAt40, viscosityScale } from './quantities.ts'
import { viscosityForFilm } from './viscosityForFilm.ts'

/** How many times as thick the oil must at least be for a wanted film; where a twentieth still holds it, a twentieth. */
export const about = {
  name: 'Least thickness of oil for a film',
  in: {
    wanted: role(filmThickness, 'h_w', 'Wanted film'), pressure: bearingPressure, slenderness, diameter: journalDiameter, clearance: radialClearance,
    filmSpeed: role(bearingSpeed, 'n_f', 'Speed that makes the film'), slidingSpeed: role(bearingSpeed, 'n_s', 'Sliding speed'), supply: oilTemperature,
    viscosity40: viscosityAt40, viscosity100: viscosityAt100, density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), share: highShearShare,
  },
  out: viscosityScale,
  steps: ['The film of an oil a twentieth as thick is found.', 'Where that is enough, a twentieth is the answer: the oil decides nothing there.', 'Else the factor is closed in on, up to twenty.'],
  source: ['raimondi-boyd', 'solved backwards'],
} as const satisfies About

const least = 0.05
export const timesForFilm = formula<typeof about>('times-for-film', { slenderness: [0.25, 1000] }, (x) => {
  const thin = untraced(() => loadedFilm({ ...x, share: x.share * least }).film * x.clearance)
  return thin >= x.wanted ? root('least viscosity factor', least, 0) : viscosityForFilm(x)
})
