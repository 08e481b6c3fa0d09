import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange, fuelPerCharge } from './quantities.ts'

/** How much of the fuel meant for a charge does not arrive. */
export const about = {
  name: 'Change of the fuel that arrives',
  in: { arrives: role(fuelPerCharge, 'm_d', 'Fuel that arrives'), meant: role(fuelPerCharge, 'm_1', 'Fuel that was meant') },
  out: fuelChange,
  equation: 'arrives / meant - 1',
  source: ['definition', 'a relative difference'],
} as const satisfies About

export const fuelLack = formula<typeof about>('fuel-lack', {}, ({ arrives, meant }) => arrives / meant - 1)
