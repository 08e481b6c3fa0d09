/** The invented radiator of these tests, and the flows of its rating. */
export const rating = { heat: 75e3, coolantTemperature: 368.15, airTemperature: 308.15, air: 2, coolant: 2e-3, glycol: 0.5 } as const
export const sides = { airShare: 0.8, ratedAir: rating.air, airExponent: 0.6, ratedCoolant: rating.coolant, coolantExponent: 0.8 } as const
