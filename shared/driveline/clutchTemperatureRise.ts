import { formula, type About } from '../formula/formula.ts'
import { clutchRise, engagementHeat, heatShare, ironMass, ironSpecificHeat } from './quantities.ts'

/** Mean temperature rise of the iron that takes up the heat of one engagement. `x E / (m c)`, kelvin. */
export const about = {
  name: 'Temperature rise of one engagement',
  in: { heat: engagementHeat, share: heatShare, mass: ironMass, specificHeat: ironSpecificHeat },
  out: clutchRise,
  equation: 'share * heat / (mass * specificHeat)',
  source: ['shigley-machine-design', 'section 16-9, lumped temperature rise'],
  notes: 'The mean of the whole mass: the rubbed face is hotter for a moment, and the facing itself hotter still. No cooling during the slip.',
} as const satisfies About

export const clutchTemperatureRise = formula<typeof about>('clutch-temperature-rise', {},
  ({ heat, share, mass, specificHeat }) => (share * heat) / (mass * specificHeat))
