import { globSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gather, type Registry } from './formula/known.ts'

/** Folders that declare nothing of the trade. */
const machinery = /^(node_modules|cli|build|calculation|formula|numerics|quantity)$/

/** Gathers the package from its files, for Node: tests, the headless commands, reference data. The site gathers the same files through its bundler. */
export async function loadRegistry(): Promise<Registry> {
  const here = dirname(fileURLToPath(import.meta.url))
  const paths = globSync('*/**/*.ts', { cwd: here, exclude: (name) => machinery.test(String(name)) }).map((p) => p.replaceAll('\\', '/')).sort()
  const modules = await Promise.all(paths.map(async (path) => [path, (await import(/* @vite-ignore */ `./${path}`)) as Record<string, unknown>] as const))
  return gather(Object.fromEntries(modules))
}
