import { formula, type About } from '../formula/formula.ts'
import { degC, kPa } from '../quantity/si.ts'
import { fuelTemperature, reidPressure, vapourPressure } from './quantities.ts'

/** Vapour pressure of petrol at a temperature, from its standard figure at 37.8 °C; distillation slope 3, the usual one of petrol. */
export const about = {
  name: 'Vapour pressure of warm petrol',
  in: { reid: reidPressure, temperature: fuelTemperature },
  out: vapourPressure,
  units: { reid: 'psi abs', temperature: '°F', out: 'psi abs' },
  equation: 'exp((0.7553 - 413.0 / (temperature + 459.6)) * sqrt(3) * log10(reid) - (1.854 - 1042 / (temperature + 459.6)) * sqrt(3) + (2416 / (temperature + 459.6) - 2.013) * log10(reid) - 8742 / (temperature + 459.6) + 15.64)',
  source: ['epa-ap42-7-1', 'figure 7.1-14b, refined petroleum stocks'],
  notes: 'Drawn for tanks from 0 to 140 °F; a hot rail lies beyond it, and there the equation is an extrapolation. Ethanol counts through the stated vapour pressure alone.',
} as const satisfies About

const psi = 4.4482216152605 / 0.0254 ** 2
export const trueVapourPressure = formula<typeof about>('true-vapour-pressure', { reid: [kPa(13.8), kPa(103.4)], temperature: [degC(-17.8), degC(60)] }, ({ reid, temperature }) => {
  const rankine = (temperature - 273.15) * 1.8 + 32 + 459.6
  const log = Math.log10(reid / psi)
  const slope = Math.sqrt(3)
  return psi * Math.exp((0.7553 - 413 / rankine) * slope * log - (1.854 - 1042 / rankine) * slope + (2416 / rankine - 2.013) * log - 8742 / rankine + 15.64)
})
