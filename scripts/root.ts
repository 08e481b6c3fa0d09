import { dirname, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the project. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** Where the built site goes: `dist`, or what the environment variable OUT names. */
export const outDir = resolve(root, process.env.OUT || 'dist')

/** Where the site lives on its host, with a slash at both ends: `/`, or `/handbook/` for `BASE=handbook`. */
export const base = `/${process.env.BASE ?? ''}/`.replace(/\/+/g, '/')
