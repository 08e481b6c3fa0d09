import { formula, type About } from '../formula/formula.ts'
import { bearingLoad, eccentricityRatio, frictionVariable, journalDiameter, oilDensity, oilDrop, oilRise, oilSpecificHeat, sommerfeldNumber } from './quantities.ts'

/** Warming of the oil in a bearing fed under pressure through a groove all round. */
export const about = {
  name: 'Temperature rise of a groove-fed bearing',
  in: { friction: frictionVariable, sommerfeld: sommerfeldNumber, load: bearingLoad, supply: oilDrop, diameter: journalDiameter, eccentricity: eccentricityRatio, density: oilDensity, specificHeat: oilSpecificHeat },
  out: oilRise,
  equation: '24 * friction * sommerfeld * load^2 / (density * specificHeat * supply * diameter^4 * (1 + 1.5 * eccentricity^2))',
  sample: { supply: [0.5e5, 10e5] },
  source: ['shigley-bearings', 'equation 12-24: ΔT = 1.5 (r/c)f S W² / (ρ c (1 + 1.5 ε²) p_s r⁴), W carried by both halves together'],
  notes: 'All friction heat leaves with the oil that the supply pressure drives through.',
} as const satisfies About

export const grooveRise = formula<typeof about>('groove-rise', {}, ({ friction, sommerfeld, load, supply, diameter, eccentricity, density, specificHeat }) =>
  (24 * friction * sommerfeld * load * load) / (density * specificHeat * supply * diameter ** 4 * (1 + 1.5 * eccentricity * eccentricity)))
