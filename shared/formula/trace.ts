/**
 * The working of a calculation, recorded as its formulas run. Calculations are synchronous, so one variable per realm is
 * enough; `traced` refuses a promise by type. Solvers iterate untraced and evaluate once more at the answer.
 */
export type Step = {
  readonly id: string
  readonly in: Readonly<Record<string, unknown>>
  readonly out: unknown
  /** How deep inside other formulas this one was called: 0 is called by the calculation itself. */
  readonly depth: number
  /** Inputs outside the range that the formula's source states. */
  readonly outside: readonly string[]
}
/** A number found by a solver, with what was left over. */
export type Root = { readonly id: 'root'; readonly name: string; readonly value: number; readonly residual: number; readonly depth: number }
export type Entry = Step | Root

let entries: Entry[] | null = null
let depth = 0

export const tracing = (): boolean => entries !== null
export const enter = (): void => { depth++ }
export const leave = (): void => { depth-- }
export const record = (step: Omit<Step, 'depth'>): void => { entries?.push({ ...step, depth }) }

/** Tells the trace that a solver found this number. Returns the number. */
export function root(name: string, value: number, residual: number): number {
  entries?.push({ id: 'root', name, value, residual, depth })
  return value
}

/** Runs without recording: for what a solver tries on its way. */
export function untraced<T>(run: () => T): T {
  const kept = entries
  entries = null
  try { return run() } finally { entries = kept }
}

/** Runs and records every formula called. */
export function traced<T>(run: () => T extends Promise<unknown> ? never : T): { result: T; trace: readonly Entry[] } {
  const kept = entries
  const keptDepth = depth
  const own: Entry[] = (entries = [])
  depth = 0
  try { return { result: run() as T, trace: own } } finally { entries = kept; depth = keptDepth }
}
