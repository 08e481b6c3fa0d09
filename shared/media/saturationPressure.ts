import { formula, type About } from '../formula/formula.ts'
import { gasTemperature } from '../boost/quantities.ts'
import { saturation } from './quantities.ts'

/** Pressure at which water vapour is in balance with liquid water. */
export const about = {
  name: 'Saturation pressure of water',
  in: { temperature: gasTemperature },
  out: saturation,
  equation: '22.064e6 * exp(647.096 / temperature * (-7.85951783 * (1 - temperature / 647.096) + 1.84408259 * (1 - temperature / 647.096)^1.5 - 11.7866497 * (1 - temperature / 647.096)^3 + 22.6807411 * (1 - temperature / 647.096)^3.5 - 15.9618719 * (1 - temperature / 647.096)^4 + 1.80122502 * (1 - temperature / 647.096)^7.5))',
  units: { temperature: 'K', out: 'Pa' },
  source: ['wagner-pruss-1993', 'equation 1, saturation pressure'],
  notes: 'From the triple point to the critical point. Below 0 °C it is continued over liquid water, as relative humidity in weather reports is; over ice the pressure is lower.',
  sample: { temperature: [233.15, 640] },
} as const satisfies About

const critical = { temperature: 647.096, pressure: 22.064e6 }

export const saturationPressure = formula<typeof about>('saturation-pressure', { temperature: [273.16, 647.096] }, ({ temperature }) => {
  const t = 1 - temperature / critical.temperature
  const root = Math.sqrt(t)
  const t3 = t * t * t
  const sum = -7.85951783 * t + 1.84408259 * t * root - 11.7866497 * t3 + 22.6807411 * t3 * root - 15.9618719 * t3 * t + 1.80122502 * t3 * t3 * t * root
  return critical.pressure * Math.exp((critical.temperature / temperature) * sum)
})
