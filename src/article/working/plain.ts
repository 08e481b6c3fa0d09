import type { About } from '@trochoid/compute/formula/formula.ts'
import { outsOf } from './described.ts'

/** Equations as plain text with places for the values, `{o.out} = {i.ratedFlow} * sqrt({i.drop} / {i.ratedDrop})`: for copying. */
export function plainLines(about: About): string[] {
  const outs = Object.keys(outsOf(about))
  const placed = (equation: string): string => equation.replace(/[A-Za-z_]\w*/g, (name) => (name in about.in ? `{i.${name}}` : outs.includes(name) ? `{o.${name}}` : name in (about.constants ?? {}) ? `{c.${name}}` : name))
  if ('equation' in about) {
    const each = typeof about.equation === 'string' ? { [outs[0]!]: about.equation } : about.equation
    return Object.entries(each).map(([name, equation]) => `{o.${name}} = ${placed(equation)}`)
  }
  return 'holds' in about ? [about.holds].flat().map(placed) : []
}
