import { formula, type About } from '../formula/formula.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { filmRise } from './filmRise.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { oilSpecificHeatAt } from './oilSpecificHeatAt.ts'
import {
  bearingPressure, bearingSpeed, dynamicViscosity, filmShare, filmTemperature, flowVariable, frictionVariable, highShearShare, journalDiameter, oilDensity, oilRise,
  oilTemperature, radialClearance, slenderness, sommerfeldNumber, viscosityAt100, viscosityAt40,
} from './quantities.ts'
import { raimondiBoyd } from './raimondiBoyd.ts'
import { riseVariableOf } from './riseVariableOf.ts'
import { sommerfeld } from './sommerfeld.ts'

/** A loaded film whose viscosity and warming agree: solved to the one temperature that stands for the whole film. */
export const about = {
  name: 'Loaded film at its own temperature',
  in: {
    pressure: bearingPressure, slenderness, diameter: journalDiameter, clearance: radialClearance,
    filmSpeed: role(bearingSpeed, 'n_f', 'Speed that makes the film'), slidingSpeed: role(bearingSpeed, 'n_s', 'Sliding speed'), supply: oilTemperature,
    viscosity40: viscosityAt40, viscosity100: viscosityAt100, density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), share: highShearShare,
  },
  out: {
    film: filmShare, friction: frictionVariable, flow: flowVariable, sommerfeld: sommerfeldNumber, viscosity: dynamicViscosity, temperature: filmTemperature, rise: oilRise,
  },
  steps: [
    'Guess the film temperature, no cooler than the supply.', 'Read the film viscosity there and form the Sommerfeld number.', 'Read the bearing tables and find how much the oil warms.',
    'The film temperature must be the supply plus half the warming: close in on it by bracketing.',
  ],
  source: ['shigley-bearings', 'section 12-9: steady state at the mean film temperature'],
  notes: 'All friction heat leaves with the oil that the film itself draws: no heat through the metal, no flow by supply pressure. It reads warm, and so thin. Oil enters by a hole.',
} as const satisfies About

/** Film temperature is found to this many kelvin. */
const fine = 0.02
/** First stride of the search, K: most films lie within it. */
const stride = 25

export const loadedFilm = formula<typeof about>('loaded-film', { slenderness: [0.25, 1000] }, (x) => {
  const { pressure, slenderness: shape, diameter, clearance, filmSpeed, slidingSpeed, supply, density15 } = x
  const at = (temperature: number) => {
    const viscosity = filmAtTemperature({ ...x, temperature })
    const number = sommerfeld({ diameter, clearance, viscosity, speed: filmSpeed, pressure })
    const { film, friction, flow, side } = raimondiBoyd({ sommerfeld: number, slenderness: shape })
    const rise = filmRise({
      variable: riseVariableOf({ friction, flow, side }), pressure, filmSpeed, slidingSpeed,
      density: oilDensityAt({ density15, temperature }), specificHeat: oilSpecificHeatAt({ density15, temperature }),
    })
    return { film, friction, flow, sommerfeld: number, viscosity, temperature, rise }
  }
  const found = untraced(() => {
    const short = (temperature: number): number => temperature - supply - at(temperature).rise / 2
    const cold = short(supply)
    if (!Number.isFinite(cold)) return { x: supply, residual: cold }
    // Warmer oil shears easier, so the warming at supply temperature is more than there can be; of very cold oil it says nothing useful.
    let low = supply, below = cold, step = Math.min(Math.max(-cold, fine), stride)
    for (let i = 0; i < 12; i++) {
      const above = short(low + step)
      if (!(above < 0)) return bracketedRoot(short, low, low + step, fine, below, above)
      low += step; below = above; step *= 2
    }
    return { x: low, residual: below }
  })
  return at(root('film temperature', found.x, found.residual))
})
