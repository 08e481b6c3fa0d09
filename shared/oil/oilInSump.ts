import { dilutedViscosity } from './dilutedViscosity.ts'
import { gradeLimits } from './gradeLimits.ts'
import { highShearShareOf } from './highShearShareOf.ts'
import { viscosity40ByIndex } from './viscosity40ByIndex.ts'
import { viscosityAt150 } from './viscosityAt150.ts'

/** An oil as the sheet knows it: a grade at least, its own figures where they were entered. */
export type SheetOil = {
  readonly grade: string; readonly own40: number | null; readonly own100: number | null; readonly ownHighShear: number | null
  readonly index: number; readonly density15: number; readonly dilution: number
}

/**
 * The oil that the bearings get. What the data sheet did not say is taken from the grade: its least viscosity at 100 °C, its least
 * high-shear viscosity, and the index for 40 °C. So an oil known by its grade alone is the thinnest that may carry it.
 */
export function oilInSump({ grade, own40, own100, ownHighShear, index, density15, dilution }: SheetOil) {
  const limits = gradeLimits({ grade })
  const fresh100 = own100 ?? limits.least
  const fresh40 = own40 ?? viscosity40ByIndex({ viscosity100: fresh100, index })
  const highShear = ownHighShear ?? limits.highShear
  const lowShear = viscosityAt150({ viscosity40: fresh40, viscosity100: fresh100, density15 })
  // A winter grade alone promises nothing at high shear: then none is taken off.
  const share = Number.isNaN(highShear) ? 1 : highShearShareOf({ highShear, lowShear })
  return { ...dilutedViscosity({ share: dilution, viscosity40: fresh40, viscosity100: fresh100 }), share, most100: limits.most }
}
