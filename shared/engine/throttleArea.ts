import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { flowArea } from '../boost/quantities.ts'
import { plateAngle, throttleBore, throttleShaft } from './quantities.ts'

/** Free area beside a throttle plate, seen along the bore. */
export const about = {
  name: 'Open area of a throttle plate',
  in: { bore: throttleBore, shaft: throttleShaft, angle: role(plateAngle, 'ψ', 'Angle of the plate from across the bore'), closed: role(plateAngle, 'ψ_0', 'Angle of the shut plate') },
  out: flowArea,
  steps: [
    'Seen along the bore, a plate that shuts at ψ_0 is an ellipse as wide as the bore and c = cos ψ / cos ψ_0 as high; the shaft is a band across it, a = shaft over bore high.',
    'Free are the parts of the circle beyond both: 1 - c + (2/π) (a/c sqrt(c² - a²) + c asin(a/c) - a sqrt(1 - a²) - asin a) of the bore’s area.',
    'Once the ellipse is lower than the shaft, c below a, only the shaft stands in the way: 1 - (2/π) (a sqrt(1 - a²) + asin a).',
  ],
  source: ['derived', 'segments of a circle and of an ellipse; Heywood 1988, equation 7.18, is of the same form'],
  notes: 'A thin plate in a round bore. What leaks past the shut plate is not in it. The equation is often quoted with the signs of both arcsines turned round, which costs up to 2 % of area.',
} as const satisfies About

export const throttleArea = formula<typeof about>('throttle-area', {}, ({ bore, shaft, angle, closed }) => {
  const a = Math.min(1, shaft / bore)
  const c = Math.cos(Math.min(Math.max(angle, closed), Math.PI / 2)) / Math.cos(closed)
  const band = a * Math.sqrt(1 - a * a) + Math.asin(a)
  const hidden = c > a ? c - (2 / Math.PI) * ((a / c) * Math.sqrt(c * c - a * a) + c * Math.asin(a / c)) : 0
  return (((1 - hidden - (2 / Math.PI) * band) * Math.PI) / 4) * bore * bore
})
