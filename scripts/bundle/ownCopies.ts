import { basename } from 'node:path'
import { type Plugin } from 'vite'

/** Where a discipline declares its words, and the formulas with what stands between them: every calculation uses a few of each. */
const copied = /\/shared\/(?:[a-z]+\/(?:quantities|fields|point)|(?:boost|cooling|driveline|engine|fuel|media|numerics|oil|session|spark)\/\w+)\.ts$/
/** What is loaded by itself, by name. */
const alone = /\/shared\/[a-z]+\/[^/?]+\.calc\.ts$|\/src\/article\/figures\/[^/?]+\.tsx$/
const mark = '?used-by='
const pointImport = /import \{ at(?: as (\w+))? \} from ("|')([^"']*\/point\.ts)\2/g

type Node = { readonly type: string; readonly start: number; readonly end: number; readonly [key: string]: unknown }

/**
 * Gives each calculation and figure its own copy of the declarations and formulas it uses. Shared, the declarations of a discipline would be one file
 * with every quantity that any calculator names, half of what an article with calculators would load; of its own copy the bundler drops what is not used.
 * A formula is a hundred bytes, and twice that in a file which it shares with nothing: of thirty such files a third was names and a fresh start for the
 * compressor.
 */
export function ownCopies(): Plugin {
  return {
    name: 'own-copies',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId: {
      order: 'pre',
      async handler(source, importer) {
        const user = userOf(importer)
        if (user === undefined || !/^(\.|@trochoid\/compute\/)/.test(source)) return null
        const found = await this.resolve(source, importer, { skipSelf: true })
        return found && copied.test(found.id) ? found.id + mark + user : null
      },
    },
    transform(code, id) {
      if (alone.test(id)) return { code: code.replace(pointImport, (_, as: string | undefined, quote: string, from: string) => `import * as ${as ?? 'at'} from ${quote}${from}${quote}`), map: null }
      if (!id.includes(`/point.ts${mark}`)) return null
      const { body } = this.parse(code) as unknown as { body: readonly Node[] }
      return { code: apart(body, code), map: null }
    },
  }
}

function userOf(importer: string | undefined): string | undefined {
  if (importer === undefined) return undefined
  const at = importer.indexOf(mark)
  if (at >= 0) return importer.slice(at + mark.length)
  return alone.test(importer) ? basename(importer) : undefined
}

/** `export const at = { a: …, b: … }` as exports of their own: a bundler drops those, but no properties. */
function apart(body: readonly Node[], code: string): string {
  const node = body.find((one) => one.type === 'ExportNamedDeclaration')!
  const [made] = (node['declaration'] as { declarations: readonly Node[] }).declarations
  const properties = (made!['init'] as { properties: readonly Node[] }).properties
  const parts = properties.map((p) => {
    const name = (p['key'] as { name: string }).name
    const value = p['value'] as Node
    return `const $${name} = ${code.slice(value.start, value.end)}\nexport { $${name} as ${name} }`
  })
  return code.slice(0, node.start) + parts.join('\n') + code.slice(node.end)
}
