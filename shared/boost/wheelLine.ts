import { formula, type About } from '../formula/formula.ts'
import { airHeatRatio, airSpecificHeat } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { compressorEfficiency, exducer, gasFlow, gasTemperature, linePlace, pressureRatio, turboSpeed } from './quantities.ts'
import { tipMachOf } from './tipMachOf.ts'
import { tipSpeedOf } from './tipSpeedOf.ts'

/** Estimated pressure ratio and efficiency at a place of a wheel’s speed line. */
export const about = {
  name: 'Speed line from the wheel',
  in: {
    exducer, speed: turboSpeed, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), surge: role(gasFlow, 'm_s', 'Flow at surge'), right: role(gasFlow, 'm_k', 'Flow at the right edge'), place: linePlace,
  },
  out: { ratio: pressureRatio, efficiency: compressorEfficiency },
  constants: { airSpecificHeat, airHeatRatio },
  steps: [
    'Head parameter ψ = c_p T_1 (π^((γ-1)/γ) - 1) / (u²/2) over flow: ψ = (k_1 + k_2 m) / (k_3 - m), the form of Jensen and Kristensen.',
    'Its three coefficients from three assumptions: ψ is 1.08 at surge and a third of that at the right edge; the line would fall to nothing beyond it by a share of 0.28 - 0.15 M of the edge’s flow, 0.05 at least.',
    'Efficiency is their parabola over flow: best at two fifths of the way from surge, 8 points less at surge, 18 less at the right edge.',
    'The best is 1 - 0.23 (60 mm / exducer)^0.2, less 0.12 (M - 0.9)²: small wheels leak more, fast ones lose in shocks.',
  ],
  source: ['moraal-kolmanovsky-1999', 'forms of Jensen and Kristensen for head parameter and efficiency; every number in them is an assumption of this handbook'],
  notes: 'An estimate. The forms fit maps that exist and predict none: what size alone cannot tell was assumed.',
} as const satisfies About

const k = (airHeatRatio.value - 1) / airHeatRatio.value

export const wheelLine = formula<typeof about>('wheel-line', {}, ({ exducer: diameter, speed, temperature, surge, right, place }) => {
  const tip = tipSpeedOf({ speed, diameter })
  const mach = tipMachOf({ tipSpeed: tip, temperature })
  const flow = surge + (right - surge) * place
  const [high, low] = [1.08, 0.36]
  const k3 = right * (1 + Math.max(0.05, 0.28 - 0.15 * mach))
  const k2 = (low * (k3 - right) - high * (k3 - surge)) / (right - surge)
  const k1 = high * (k3 - surge) - k2 * surge
  const head = ((k1 + k2 * flow) / (k3 - flow)) * (tip * tip) / 2
  const best = 1 - 0.23 * (0.06 / diameter) ** 0.2 - 0.12 * (mach - 0.9) ** 2
  return { ratio: (1 + head / (airSpecificHeat.value * temperature)) ** (1 / k), efficiency: Math.max(0.3, best - 0.5 * (place - 0.4) ** 2) }
})
