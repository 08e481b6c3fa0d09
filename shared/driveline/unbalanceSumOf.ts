import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { unbalance, unbalanceAngle } from './quantities.ts'

const one = (n: number) => ({ amount: role(unbalance, `U_${n}`, `Unbalance ${n}`), angle: role(unbalanceAngle, `θ_${n}`, `Angle ${n}`) })
const [first, second, third, fourth] = [one(1), one(2), one(3), one(4)]

/**
 * Unbalances of four parts on one shaft, added as arrows. Amount in kg m; the angle from the same mark and in the same sense as those
 * given, −180° to 180°. Parts whose marks are matched keep this sum; a part put on turned changes it.
 */
export const about = {
  name: 'Sum of unbalances',
  in: { u1: first!.amount, a1: first!.angle, u2: second!.amount, a2: second!.angle, u3: third!.amount, a3: third!.angle, u4: fourth!.amount, a4: fourth!.angle },
  out: { amount: unbalance, angle: unbalanceAngle },
  equation: {
    amount: 'sqrt((u1 * cos(a1) + u2 * cos(a2) + u3 * cos(a3) + u4 * cos(a4))^2 + (u1 * sin(a1) + u2 * sin(a2) + u3 * sin(a3) + u4 * sin(a4))^2)',
    angle: 'atan2((u1 * sin(a1) + u2 * sin(a2) + u3 * sin(a3) + u4 * sin(a4)) / u1, (u1 * cos(a1) + u2 * cos(a2) + u3 * cos(a3) + u4 * cos(a4)) / u1)',
  },
  source: ['definition', 'unbalances in one plane add as vectors'],
  notes: 'All in one plane across the shaft. Parts apart along the shaft leave a couple as well.',
  sample: { u1: [1e-4, 1e-2] },
} as const satisfies About

export const unbalanceSumOf = formula<typeof about>('unbalance-sum-of', {}, ({ u1, a1, u2, a2, u3, a3, u4, a4 }) => {
  const along = u1 * Math.cos(a1) + u2 * Math.cos(a2) + u3 * Math.cos(a3) + u4 * Math.cos(a4)
  const across = u1 * Math.sin(a1) + u2 * Math.sin(a2) + u3 * Math.sin(a3) + u4 * Math.sin(a4)
  return { amount: Math.hypot(along, across), angle: Math.atan2(across, along) }
})
