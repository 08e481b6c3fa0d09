import { type About, type Formula } from './formula.ts'
import { type AnyCalculation } from '../calculation/calculation.ts'
import { type Field, type Reasons } from '../build/field.ts'
import { type PointValue } from '../build/pointValue.ts'
import { type Margin } from '../build/margin.ts'
import { type Check } from '../checks/check.ts'
import { type Shape, type Words } from '../quantity/quantity.ts'
import { type Sources } from '../data/source.ts'

/** A formula with its words, as the reference, the tests and the workings need them. */
export type Known = { readonly id: string; readonly folder: string; readonly file: string; readonly about: About; readonly formula: Formula }

/** Everything the package declares, gathered from its files: nothing has to be entered in a list by hand. */
export type Registry = {
  readonly formulas: ReadonlyMap<string, Known>
  readonly calculations: ReadonlyMap<string, AnyCalculation>
  readonly margins: ReadonlyMap<string, Margin>
  readonly quantities: ReadonlyMap<string, { readonly quantity: Shape; readonly folder: string; readonly words: Words | undefined }>
  readonly fields: ReadonlyMap<string, { readonly field: Field; readonly folder: string; readonly why: string | undefined }>
  readonly pointValues: ReadonlyMap<string, PointValue>
  readonly sources: Sources
  readonly checks: readonly Check[]
}

type Module = Readonly<Record<string, unknown>>

const isFormula = (x: unknown): x is Formula => typeof x === 'function' && 'range' in x && 'id' in x
const hasOrigin = (x: unknown, origin: string): boolean => typeof x === 'object' && x !== null && 'origin' in x && x.origin === origin

/** Sorts the modules of `shared/` by what they export. `path` is relative to `shared/`, as `fuel/injectorFlowAt.ts`. */
export function gather(modules: Readonly<Record<string, Module>>): Registry {
  const formulas = new Map<string, Known>()
  const calculations = new Map<string, AnyCalculation>()
  const margins = new Map<string, Margin>()
  const quantities = new Map<string, { quantity: Shape; folder: string; words: Words | undefined }>()
  const fields = new Map<string, { field: Field; folder: string; why: string | undefined }>()
  const pointValues = new Map<string, PointValue>()
  const sources: Record<string, Sources[string]> = {}
  const checks: Check[] = []
  const once = (map: ReadonlyMap<string, unknown>, id: string, path: string): void => { if (map.has(id)) throw new Error(`${path}: ${id} is declared twice`) }

  for (const [path, module] of Object.entries(modules)) {
    const folder = path.split('/')[0]!
    const words = modules[`${folder}/words.ts`] as { words?: Record<string, Words>; reasons?: Reasons<Record<string, Field>> } | undefined
    if (path.endsWith('/quantities.ts')) for (const [name, q] of Object.entries(module)) {
      const shape = q as Shape
      once(quantities, shape.id, path)
      quantities.set(shape.id, { quantity: shape, folder, words: words?.words?.[name] })
    } else if (path.endsWith('/fields.ts')) for (const [name, f] of Object.entries(module)) {
      if (!hasOrigin(f, 'field')) continue
      once(fields, (f as Field).path, path)
      fields.set((f as Field).path, { field: f as Field, folder, why: (words?.reasons as Record<string, string> | undefined)?.[name] })
    } else if (path.endsWith('/point.ts')) for (const v of Object.values(module['at'] as Record<string, PointValue> | undefined ?? {})) {
      once(pointValues, v.path, path)
      pointValues.set(v.path, v)
    } else if (path.endsWith('/sources.ts')) Object.assign(sources, module['sources'])
    else if (path.endsWith('.calc.ts')) {
      const c = module['default'] as AnyCalculation
      once(calculations, c.id, path)
      calculations.set(c.id, c)
    } else if (path.endsWith('.margin.ts')) for (const m of [module['default']].flat() as Margin[]) {
      once(margins, m.id, path)
      margins.set(m.id, m)
    } else if (path.startsWith('checks/') && Array.isArray(module['checks'])) checks.push(...(module['checks'] as Check[]))
    else if ('about' in module) {
      const formula = Object.values(module).find(isFormula)
      if (!formula) throw new Error(`${path}: about without its formula`)
      once(formulas, formula.id, path)
      formulas.set(formula.id, { id: formula.id, folder, file: path, about: module['about'] as About, formula })
    }
  }
  return { formulas, calculations, margins, quantities, fields, pointValues, sources, checks }
}
