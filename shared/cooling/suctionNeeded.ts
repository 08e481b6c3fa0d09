import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantDensityOf, coolantFlowOf, pumpShaftSpeed, suctionNumber, suctionPressure } from './quantities.ts'

/** What a pump needs above boiling before it cavitates. `ρ (ω √V / Ω_s)^(4/3)`. */
export const about = {
  name: 'Pressure above boiling that the pump needs',
  in: { density: coolantDensityOf, speed: pumpShaftSpeed, flow: coolantFlowOf, number: suctionNumber },
  out: role(suctionPressure, 'Δp_n', 'Needed above boiling'),
  equation: 'density * (speed * sqrt(flow) / number)^(4/3)',
  source: ['brennen-pumps', 'suction specific speed: ω √V over (net positive suction energy)^(3/4)'],
  notes: 'Near 3 for ordinary impellers, where the head has fallen by some per cent; simple stamped wheels bear less.',
} as const satisfies About

export const suctionNeeded = formula<typeof about>('suction-needed', {}, ({ density, speed, flow, number }) => density * ((speed * Math.sqrt(flow)) / number) ** (4 / 3))
