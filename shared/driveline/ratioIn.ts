import { NoAnswer } from '../calculation/calculation.ts'
import { type Of } from '../quantity/quantity.ts'
import { firstGear, secondGear, thirdGear, fourthGear, fifthGear, sixthGear } from './fields.ts'

type Gear = 'first' | 'second' | 'third' | 'fourth' | 'fifth' | 'sixth'
type Ratios = { readonly [G in Gear]: Of<'number'> | null }

/** The ratios of the sheet as inputs of a calculation that chooses one of them; a gear that the gearbox lacks is empty. */
export const ratiosOf = {
  first: firstGear, second: secondGear, third: thirdGear, fourth: { ...fourthGear, optional: true }, fifth: { ...fifthGear, optional: true }, sixth: { ...sixthGear, optional: true },
} as const

/** The ratio of the chosen gear. @throws NoAnswer where the sheet has no such gear */
export function ratioIn(gear: Gear, ratios: Ratios): Of<'number'> {
  const ratio = ratios[gear]
  if (ratio === null) throw new NoAnswer('gearbox', `The sheet has no ${gear} gear: enter its ratio or choose another.`)
  return ratio
}
