import { calculation, free, NoAnswer, optional } from '@trochoid/compute/calculation/calculation.ts'
import { formula } from '@trochoid/compute/formula/formula.ts'
import { choice, quantity } from '@trochoid/compute/quantity/quantity.ts'

/** A calculation made up for tests: the area of a rectangle, and what is left of it after a strip is cut off. */
export const width = quantity('Width', 'w', 'length', [1, 5], 0.01)
export const height = quantity('Height', 'h', 'length', [-3, 3], 0.02)
export const strips = quantity('Strips', 'z', 'number', [1, 4], 1, { whole: true })
export const area = quantity('Surface', 'A', 'area', [0, 100], 0.1)
export const kind = choice('Kind', { whole: 'whole', half: 'half' })

type Square = { readonly name: 'Surface'; readonly in: { readonly width: typeof width; readonly height: typeof height }; readonly out: typeof area; readonly equation: string; readonly source: readonly ['derived', 'a rectangle'] }
type Part = Omit<Square, 'in'> & { readonly in: { readonly whole: typeof area; readonly strips: typeof strips } }
export const surface = formula<Square>('box-surface', { width: [1, 4] }, (x) => x.width * x.height)
export const part = formula<Part>('box-part', {}, (x) => x.whole / x.strips)

export const box = calculation({
  id: 'box', title: 'A box', theme: 'engine', asks: 'How large?', article: 'the-order-of-decisions', cautions: [], leavesOut: 'nothing',
  in: { width: free(width, 2), height: free(height, 1.5, 'How high'), strips: free(strips, 2), kind: free(kind, 'whole'), spare: optional(free(width, 3)) },
  out: { whole: area, part: area },
  curve: ['width', 'part'],
  answer: (x) => {
    if (x.height < -2) throw new NoAnswer('box', 'Too low.')
    const whole = surface({ width: x.width, height: x.height })
    return { whole, part: x.kind === 'half' ? part({ whole, strips: x.strips }) : whole }
  },
  says: () => 'The part is {part}.',
})
export const here = { width: 2, height: 1.5, strips: 2, kind: 'half', spare: null }
