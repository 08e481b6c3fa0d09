import { NoAnswer, run, type AnyCalculation, type Values } from './calculation.ts'
import { sampleValues } from './samples.ts'

/** Ids of all formulas that a calculation reaches, over the given inputs and 200 sampled ones, in the order in which they first run. */
export function reachable(of: AnyCalculation, values: Values): readonly string[] {
  const found = new Set<string>()
  const look = (given: Values): void => {
    try { for (const entry of run(of, given).trace) if (entry.id !== 'root') found.add(entry.id) } catch (error) { if (!(error instanceof NoAnswer)) throw error }
  }
  look(values)
  for (let i = 0; i < 200; i++) {
    const sampled = sampleValues(of, i)
    // Maps and curves are not sampled: they stay as the build has them.
    look(Object.fromEntries(Object.keys(of.in).map((name) => [name, sampled[name] ?? values[name]])))
  }
  return [...found]
}
