import { loadRegistry } from '../registry.ts'
import { type Registry } from '../formula/known.ts'
import { type Field } from '../build/field.ts'
import { type Solved } from '../build/point.ts'
import { type Sheet } from '../build/sheet.ts'
import { solveBuild } from '../build/solve.ts'
import { demoPoint } from '../build/demo.ts'
import { builds } from '../data/builds/index.ts'

/** What every command works with: the package's declarations, and the demo build that gives inputs their defaults. */
export type Workshop = {
  readonly registry: Registry
  readonly fields: ReadonlyMap<string, Field>
  readonly demo: Sheet
  /** Solved when first asked for. */
  readonly demoPoint: () => Readonly<Record<string, number>>
}

export async function openWorkshop(): Promise<Workshop> {
  const registry = await loadRegistry()
  const demo = builds.street
  let solved: Solved | undefined
  return {
    registry, demo,
    fields: new Map([...registry.fields].map(([path, { field }]) => [path, field])),
    demoPoint: () => demoPoint((solved ??= solveBuild(demo))),
  }
}
