import { formula, type About } from '../formula/formula.ts'
import { dashBore } from '../quantity/dash.ts'
import { dashNumber, lineBore } from './quantities.ts'

/** Bore of a hose by its dash number, which names the tube it replaces: the bore is smaller. */
export const about = {
  name: 'Bore of a hose by dash number',
  in: { dash: dashNumber },
  out: lineBore,
  table: 'Hose bores of MIL-H-8794 by dash number; no value between sizes.',
  nodes: [
    { in: { dash: 4 }, out: 0.1875 * 0.0254 }, { in: { dash: 6 }, out: 0.3125 * 0.0254 }, { in: { dash: 8 }, out: 0.40625 * 0.0254 },
    { in: { dash: 10 }, out: 0.5 * 0.0254 }, { in: { dash: 12 }, out: 0.625 * 0.0254 }, { in: { dash: 32 }, out: 1.8125 * 0.0254 },
  ],
  source: ['faa-ac43', 'table 9-3'],
  notes: 'A number that is no size has no bore. Other makes of hose differ by a little: measure yours.',
} as const satisfies About

export const hoseBoreOf = formula<typeof about>('hose-bore-of', {}, ({ dash }) => dashBore(dash) ?? NaN)
