import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

export type Licensed = { readonly name: string; readonly version: string; readonly licence: string; readonly text: string }
type Package = { readonly name: string; readonly version: string; readonly license?: string; readonly dependencies?: Readonly<Record<string, string>> }

const folder = (name: string): string => join(process.cwd(), 'node_modules', name)
const read = (path: string): Package => JSON.parse(readFileSync(path, 'utf8')) as Package

/** Built into the site although they are tools: the search engine's code and the worker's. */
const alsoSent = ['pagefind', 'workbox-precaching', 'workbox-core', 'workbox-routing', 'workbox-strategies']

/** Every package whose code reaches a reader: those the site depends on, and theirs. */
export function licences(): readonly Licensed[] {
  const found = new Map<string, Licensed>()
  const add = (name: string): void => {
    if (found.has(name) || !existsSync(join(folder(name), 'package.json'))) return
    const { version, license = 'not stated', dependencies = {} } = read(join(folder(name), 'package.json'))
    const file = readdirSync(folder(name), { withFileTypes: true }).find((one) => one.isFile() && /^licen[cs]e(\.|$)/i.test(one.name))?.name
    found.set(name, { name, version, licence: license, text: file ? readFileSync(join(folder(name), file), 'utf8').trim() : '' })
    if (!alsoSent.includes(name)) Object.keys(dependencies).forEach(add)
  }
  Object.keys(read(join(process.cwd(), 'package.json')).dependencies ?? {}).forEach(add)
  alsoSent.forEach(add)
  return [...found.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'))
}
