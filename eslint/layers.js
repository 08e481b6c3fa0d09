// Dependence runs one way. A file may import from its own layer and from those below it:
//
//   pages, layouts -> components, article -> registry -> islands -> state -> shared
//
// `shared` is the computation package and knows nothing of pages, browsers or the tools that build them.

/**
 * Folders of `src` from the top down; those in one row may use each other. The registry holds every word of every formula
 * for pages as they are built: what runs in the browser lies below it.
 */
const rows = [['pages', 'layouts', 'content.config'], ['components', 'article', 'workshop'], ['registry'], ['islands'], ['state'], ['url', 'env.d', 'styles']]

/** Packages that `shared` may use. */
const sharedMayUse = [/^mathjs(\/|$)/, /^zod(\/|$)/, /^@trochoid\/compute(\/|$)/]

/** Where it meets Node itself: the commands, and the file that gathers the package from disk for them and for tests. */
const meetsNode = /^shared\/(cli\/|registry\.ts$)/

/** @param {string} path a path from the root of the project, with forward slashes */
export function layerOf(path) {
  const [top, next = ''] = path.split('/')
  if (top === 'shared') return { name: 'shared', rank: 0 }
  if (top !== 'src') return undefined
  const folder = next.replace(/\.\w+$/, '')
  const row = rows.findIndex((names) => names.includes(folder))
  return { name: folder, rank: row < 0 ? Infinity : rows.length - row }
}

/**
 * What is wrong with one import, in words, or undefined where nothing is.
 *
 * @param {string} from path of the importing file from the root of the project
 * @param {string} wanted what it imports, as written, a relative one already resolved to a path from the root
 * @param {boolean} relative whether it was written as a relative path
 */
export function faultOf(from, wanted, relative) {
  const here = layerOf(from)
  if (here === undefined) return undefined
  if (here.rank === Infinity) return `src/${here.name} has no place among the layers yet: give it one in eslint/layers.js.`
  if (here.name === 'shared') {
    if (relative) return wanted.startsWith('shared/') ? undefined : 'shared uses nothing outside itself.'
    if (wanted.startsWith('node:')) return meetsNode.test(from) ? undefined : 'Only shared/cli may use Node itself.'
    return sharedMayUse.some((pattern) => pattern.test(wanted)) ? undefined : `shared does not use ${wanted}.`
  }
  if (!relative) return undefined
  if (wanted.startsWith('shared/')) return 'Import the computation package by its name, @trochoid/compute/...'
  if (wanted.startsWith('content/')) return 'Content is read through its collections.'
  const there = layerOf(wanted)
  if (there === undefined) return `src uses nothing from ${wanted.split('/')[0]}.`
  return there.rank > here.rank ? `src/${here.name} lies below src/${there.name} and must not use it.` : undefined
}
