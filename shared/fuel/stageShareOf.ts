import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { injectorMassFlow, stageShare } from './quantities.ts'

/** Share of the fuel that the secondaries give once both stages are open for the same time. */
export const about = {
  name: 'Share of the secondaries in proportion to flow',
  in: { primaryFlow: role(injectorMassFlow, 'm_1', 'Mass flow of the primaries'), secondaryFlow: role(injectorMassFlow, 'm_2', 'Mass flow of the secondaries') },
  out: stageShare,
  equation: 'secondaryFlow / (primaryFlow + secondaryFlow)',
  source: ['derived', 'equal open time: fuel goes with flow'],
} as const satisfies About

export const stageShareOf = formula<typeof about>('stage-share-of', {}, ({ primaryFlow, secondaryFlow }) => secondaryFlow / (primaryFlow + secondaryFlow))
