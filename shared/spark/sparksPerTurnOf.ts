import { formula, type About } from '../formula/formula.ts'
import { coilLayout, sparksPerTurn } from './quantities.ts'

/**
 * Sparks that a coil gives in one turn of the shaft. Each rotor fires once a turn, so a coil of one plug gives one, and a coil for
 * plugs of both rotors gives two.
 */
export const about = {
  name: 'Sparks of a coil in a turn',
  in: { layout: coilLayout },
  out: sparksPerTurn,
  table: 'One spark per plug and shaft turn; a coil that serves both rotors of a two-rotor engine fires twice.',
  nodes: [{ in: { layout: 'own' }, out: 1 }, { in: { layout: 'shared' }, out: 2 }, { in: { layout: 'own' }, out: 1 }],
  source: ['derived', 'each rotor of a two-rotor engine fires once per shaft turn'],
} as const satisfies About

export const sparksPerTurnOf = formula<typeof about>('sparks-per-turn-of', {}, ({ layout }) => (layout === 'own' ? 1 : 2))
