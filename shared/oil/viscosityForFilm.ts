import { NoAnswer } from '../calculation/calculation.ts'
import { formula, type About } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { loadedFilm } from './loadedFilm.ts'
import {
  bearingPressure, bearingSpeed, filmThickness, highShearShare, journalDiameter, oilDensity, oilTemperature, radialClearance, slenderness, viscosityAt100, viscosityAt40, viscosityScale,
} from './quantities.ts'

/** How many times thicker an oil must be to hold a wanted film in a bearing, its own warming included. */
export const about = {
  name: 'Thickness of oil for a wanted film',
  in: {
    wanted: role(filmThickness, 'h_w', 'Wanted film'), pressure: bearingPressure, slenderness, diameter: journalDiameter, clearance: radialClearance,
    filmSpeed: role(bearingSpeed, 'n_f', 'Speed that makes the film'), slidingSpeed: role(bearingSpeed, 'n_s', 'Sliding speed'), supply: oilTemperature,
    viscosity40: viscosityAt40, viscosity100: viscosityAt100, density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), share: highShearShare,
  },
  out: viscosityScale,
  steps: ['Multiply the oil’s film viscosity by a factor, the same at every temperature.', 'Solve the loaded film at its own temperature.', 'Close in on the factor whose film is the wanted one, between a twentieth and twenty.'],
  source: ['raimondi-boyd', 'solved backwards'],
} as const satisfies About

const least = 0.05, most = 20

export const viscosityForFilm = formula<typeof about>('viscosity-for-film', { slenderness: [0.25, 1000] }, ({ wanted, ...x }) => {
  const miss = (logFactor: number): number => loadedFilm({ ...x, share: x.share * Math.exp(logFactor) }).film * x.clearance - wanted
  const found = untraced(() => {
    const low = Math.log(least), high = Math.log(most)
    const atLow = miss(low), atHigh = miss(high)
    if (!(atLow < 0 && atHigh > 0)) throw new NoAnswer('bearing', `No oil from a twentieth to twenty times as thick holds this film in a radial clearance of ${(x.clearance * 1e6).toPrecision(3)} µm.`)
    return bracketedRoot(miss, low, high, 1e-6, atLow, atHigh)
  })
  return root('viscosity factor', Math.exp(found.x), found.residual)
})
