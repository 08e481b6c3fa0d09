import { gather, type Registry } from '@trochoid/compute/formula/known.ts'

/**
 * Everything the computation package declares, gathered from its files by the bundler: for pages as they are built.
 * Nothing in the browser may import this: it holds every word of every formula.
 */
const modules = import.meta.glob<Record<string, unknown>>(['/shared/*/**/*.ts', '!/shared/node_modules/**', '!/shared/cli/**'], { eager: true })

export const registry: Registry = gather(Object.fromEntries(Object.entries(modules).map(([path, module]) => [path.replace('/shared/', ''), module])))

/** Where each calculation lies, `fuel/injectorDuty` by its id: how the browser asks for one by name. */
export const calculationFiles: ReadonlyMap<string, string> = new Map(Object.entries(modules).filter(([path]) => path.endsWith('.calc.ts'))
  .map(([path, module]) => [(module['default'] as { id: string }).id, path.replace('/shared/', '').replace('.calc.ts', '')]))
