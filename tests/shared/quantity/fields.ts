import { quantity } from '@trochoid/compute/quantity/quantity.ts'
import { read, type Reading, type Read, type Refused } from '@trochoid/compute/quantity/read.ts'
import { readArithmetic } from '@trochoid/compute/quantity/arithmetic.ts'
import { type Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { shownUnit } from '@trochoid/compute/quantity/write.ts'

/** Fields as a sheet has them, for the tests of the reader. */
export const length = quantity('Length', 'l', 'length', [1e-3, 1], 1e-4)
export const hose = quantity('Hose bore', 'd', 'length', [2e-3, 5e-2], 1e-4, { reads: 'dash' })
export const rail = quantity('Rail pressure', 'p_r', 'gaugePressure', [1.5e5, 1e6], 1e4)
export const boost = quantity('Boost', 'p_b', 'gaugePressure', [-9e4, 3e5], 3e3)
export const manifold = quantity('Manifold pressure', 'p_m', 'pressure', [2e4, 4e5], 2e3)
export const drop = quantity('Pressure drop', 'Δp', 'pressureDifference', [1e3, 1e6], 1e3)
export const charge = quantity('Charge temperature', 'T_m', 'temperature', [250, 450], 3)
export const rise = quantity('Rise', 'ΔT', 'temperatureDifference', [0, 200], 2)
export const flow = quantity('Injector flow', 'Q', 'volumeFlow', [1e-6, 1e-4], 1e-6, { show: ['cm³/min', 'cm³/min'] })
export const tank = quantity('Tank', 'V', 'volume', [0.01, 0.2], 1e-3)
export const airFlow = quantity('Air flow', 'm_a', 'massFlow', [0.002, 1.2], 1e-3)
export const torque = quantity('Torque', 'M', 'torque', [5, 1500], 5)
export const speed = quantity('Shaft speed', 'n', 'shaftSpeed', [50, 1200], 2)
export const count = quantity('Rotors', 'z', 'number', [1, 4], 1, { whole: true })
export const share = quantity('Share', 'x', 'share', [0, 1], 0.01)
export const angle = quantity('Angle', 'θ', 'angle', [-7, 7], 0.01)
export const area = quantity('Area', 'A', 'area', [1e-6, 1e-2], 1e-6)
export const force = quantity('Force', 'F', 'force', [10, 1e5], 10)
export const inductance = quantity('Inductance', 'L', 'inductance', [1e-4, 1e-2], 1e-4)
export const stress = quantity('Stress', 'σ', 'stress', [1e5, 1e9], 1e6)
export const all = { length, hose, rail, boost, manifold, drop, charge, rise, flow, tank, airFlow, torque, speed, count, share, angle, area, force, inductance, stress }

/** What a field makes of a text, arithmetic included: as the page and the headless commands do it. */
export function typed(text: string, of: Quantity, shown = shownUnit(of)): Read | Refused {
  const first: Reading = read(text, of, shown)
  return first.ok === 'arithmetic' ? readArithmetic(first.text, of, shown, first.at === undefined ? {} : { at: first.at }) : first
}
export const valueOf = (text: string, of: Quantity): number => {
  const done = typed(text, of)
  if (!done.ok) throw new Error(`${text}: ${done.says}`)
  return done.value
}
export const faultOf = (text: string, of: Quantity): string => {
  const done = typed(text, of)
  return done.ok ? `read as ${done.value}` : done.fault
}
export const saysOf = (text: string, of: Quantity): string => {
  const done = typed(text, of)
  return done.ok ? `read as ${done.value}` : done.says
}
