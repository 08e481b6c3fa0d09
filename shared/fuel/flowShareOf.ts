import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { injectorFlow, injectorsPerRotor, nozzleDrop, stageShare } from './quantities.ts'

/** Share of the secondaries in the rated flow of all injectors, both brought to one pressure. */
export const about = {
  name: 'Share of the secondaries in rated flow',
  in: {
    primaryFlow: role(injectorFlow, 'Q_1', 'Rated flow of a primary'), primaryDrop: role(nozzleDrop, 'Δp_1', 'Rated pressure of a primary'), primaries: role(injectorsPerRotor, 'z_1', 'Primaries per rotor'),
    secondaryFlow: role(injectorFlow, 'Q_2', 'Rated flow of a secondary'), secondaryDrop: role(nozzleDrop, 'Δp_2', 'Rated pressure of a secondary'), secondaries: role(injectorsPerRotor, 'z_2', 'Secondaries per rotor'),
  },
  out: stageShare,
  equation: 'secondaries * secondaryFlow / (secondaries * secondaryFlow + primaries * primaryFlow * sqrt(secondaryDrop / primaryDrop))',
  source: ['sae-j1832', 'flow goes with the square root of pressure'],
  sample: { primaries: [1, 4] },
} as const satisfies About

export const flowShareOf = formula<typeof about>('flow-share-of', {}, ({ primaryFlow, primaryDrop, primaries, secondaryFlow, secondaryDrop, secondaries }) => {
  const second = secondaries * secondaryFlow
  return second / (second + primaries * primaryFlow * Math.sqrt(secondaryDrop / primaryDrop))
})
