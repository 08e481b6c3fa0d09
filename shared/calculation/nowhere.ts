import { type Entry } from '../formula/trace.ts'
import { type AnyCalculation, type Values } from './calculation.ts'

/** Numbers that a working may hold without telling where they come from. */
const plain = new Set([0, 1])

/**
 * Numbers in a working that came from nowhere: not an input, a constant, an earlier result or a recorded root.
 * Empty when the working shown is complete.
 */
export function nowhere(of: AnyCalculation, values: Values, trace: readonly Entry[], outputs: Readonly<Record<string, number>>): string[] {
  const known = new Set<number>(plain)
  const learn = (value: unknown): void => {
    if (typeof value === 'number') known.add(value)
    else if (Array.isArray(value)) value.forEach(learn)
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(learn)
  }
  for (const name of Object.keys(of.in)) learn(values[name])
  const strange: string[] = []
  const callers = trace.filter((e) => e.depth === 0)
  for (const entry of callers) {
    if (entry.id === 'root') { known.add((entry as { value: number }).value); continue }
    const step = entry as Exclude<Entry, { id: 'root' }>
    for (const [name, value] of Object.entries(('in' in step ? step.in : {}) as Record<string, unknown>)) {
      if (typeof value === 'number' && !known.has(value) && !Number.isNaN(value)) strange.push(`${step.id}.${name} = ${value}`)
    }
    if ('out' in step) learn(step.out)
  }
  for (const [name, value] of Object.entries(outputs)) if (!known.has(value) && !Number.isNaN(value)) strange.push(`output ${name} = ${value}`)
  return strange
}
