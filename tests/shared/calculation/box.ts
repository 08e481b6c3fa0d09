import { calculation, free, NoAnswer, optional } from '@trochoid/compute/calculation/calculation.ts'
import { formula, type About } from '@trochoid/compute/formula/formula.ts'
import { choice, quantity } from '@trochoid/compute/quantity/quantity.ts'

/** A calculation made up for tests: the area of a rectangle, and what is left of it after a strip is cut off. */
export const width = quantity('Width', 'w', 'length', [1, 5], 0.01)
export const height = quantity('Height', 'h', 'length', [-3, 3], 0.02)
export const strips = quantity('Strips', 'z', 'number', [1, 4], 1, { whole: true })
export const area = quantity('Surface', 'A', 'area', [0, 100], 0.1)
export const kind = choice('Kind', { whole: 'whole', half: 'half' })

const common = { name: 'Surface', out: area, source: ['derived', 'a rectangle'] } as const
const aboutSquare = { ...common, in: { width, height }, equation: 'width * height^2 / height' } as const satisfies About
const aboutPart = { ...common, in: { whole: area, strips }, equation: 'whole / strips' } as const satisfies About
export const surface = formula<typeof aboutSquare>('box-surface', { width: [1, 4] }, (x) => x.width * x.height)
export const part = formula<typeof aboutPart>('box-part', {}, (x) => x.whole / x.strips)

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
