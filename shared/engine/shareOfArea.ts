import { formula, type About } from '../formula/formula.ts'
import { flowArea } from '../boost/quantities.ts'
import { areaShare, throttleBore } from './quantities.ts'

/** Area as a share of a round bore. */
export const about = {
  name: 'Share of the bore that is free',
  in: { area: flowArea, bore: throttleBore },
  out: areaShare,
  equation: '4 * area / (pi * bore^2)',
  source: ['definition', 'area over area'],
} as const satisfies About

export const shareOfArea = formula<typeof about>('share-of-area', {}, ({ area, bore }) => (4 * area) / (Math.PI * bore * bore))
