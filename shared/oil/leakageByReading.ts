import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, dynamicViscosity, leakageFactor, oilDensity, oilFlow, oilPressure, openArea } from './quantities.ts'

/** Leakage of the engine as one hot reading of its pressure tells it: what the pump gives less what the holes pass, through all narrow gaps. */
export const about = {
  name: 'Leakage factor by a hot reading',
  in: {
    ideal: role(oilFlow, 'Q_i', 'Pump flow without slip at the speed of the reading'), reading: role(oilPressure, 'p_h', 'Hot reading'), viscosity: dynamicViscosity, area: openArea,
    coefficient: dischargeCoefficient, density: oilDensity,
  },
  out: role(leakageFactor, 'G_h', 'Leakage factor by the reading'),
  equation: 'ideal * max(0, 1 - coefficient * area * sqrt(2 * reading / density) / ideal) * viscosity / reading',
  sample: { reading: [0.5e5, 10e5], ideal: [1e-3, 2e-3], area: [1e-6, 20e-6] },
  source: ['derived', 'the balance of the pressure without relief, solved for the leakage'],
  notes: 'For a reading below the relief setting: above it the valve, not the gaps, decides. Where the holes alone would pass more than the pump gives, the gaps are taken as closed.',
} as const satisfies About

export const leakageByReading = formula<typeof about>('leakage-by-reading', {}, ({ ideal, reading, viscosity, area, coefficient, density }) =>
  (Math.max(0, ideal - coefficient * area * Math.sqrt((2 * reading) / density)) * viscosity) / reading)
