import { dirname, join, relative, sep } from 'node:path'
import { faultOf } from './layers.js'

/** @param {string} path */
const slashed = (path) => path.split(sep).join('/')

/**
 * Reports imports that run against the layers. Astro files are read through their parser like any other.
 *
 * @type {import('eslint').Rule.RuleModule}
 */
export const dependence = {
  meta: { type: 'problem', schema: [], docs: { description: 'Dependence runs one way through the layers.' } },
  create(context) {
    const from = slashed(relative(context.cwd, context.physicalFilename ?? context.filename))
    /** @param {any} source the node that names what is imported */
    function check(source) {
      if (source?.type !== 'Literal' || typeof source.value !== 'string') return
      const written = source.value.replace(/\?.*$/, '')
      const isRelative = written.startsWith('.')
      const wanted = isRelative ? slashed(join(dirname(from), written)) : written
      const message = faultOf(from, wanted, isRelative)
      if (message) context.report({ node: source, message })
    }
    return {
      ImportDeclaration: (node) => check(node.source),
      ExportNamedDeclaration: (node) => check(node.source),
      ExportAllDeclaration: (node) => check(node.source),
      ImportExpression: (node) => check(node.source),
      /** @param {any} node */
      TSImportType: (node) => check(node.source ?? node.argument?.literal),
    }
  },
}
