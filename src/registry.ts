import { gather, type Registry } from '@trochoid/compute/formula/known.ts'

/**
 * Everything the computation package declares, gathered from its files by the bundler: for pages as they are built.
 * Nothing in the browser may import this: it holds every word of every formula.
 */
const modules = import.meta.glob<Record<string, unknown>>(['/shared/*/**/*.ts', '!/shared/node_modules/**', '!/shared/cli/**'], { eager: true })

export const registry: Registry = gather(Object.fromEntries(Object.entries(modules).map(([path, module]) => [path.replace('/shared/', ''), module])))
