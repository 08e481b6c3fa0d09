import { formula, type About } from '../formula/formula.ts'
import { frictionFactor } from '../fuel/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { bendCount, bendLoss, ductBore, ductRun, lossCoefficient } from './quantities.ts'

/** Loss coefficient of a round duct with bends, as the sheet states it: pressure loss times density over mass flow squared. */
export const about = {
  name: 'Loss coefficient of a duct with bends',
  in: { bore: ductBore, length: ductRun, friction: frictionFactor, bends: bendCount, bend: bendLoss, others: role(bendLoss, 'ζ_o', 'Other losses, in velocity heads') },
  out: lossCoefficient,
  equation: '8 / (pi^2 * bore^4) * (friction * length / bore + bends * bend + others)',
  source: ['derived', 'velocity heads ζ ρ v²/2 with v = m/(ρ A), A = π d²/4'],
  notes: 'The length is the straight part: each bend holds its own. One velocity head is lost where the duct opens into a box or the open air.',
} as const satisfies About

export const ductCoefficient = formula<typeof about>('duct-coefficient', {}, ({ bore, length, friction, bends, bend, others }) => (8 / (Math.PI ** 2 * bore ** 4)) * ((friction * length) / bore + bends * bend + others))
