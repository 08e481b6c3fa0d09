import { basename } from 'node:path'
import { type Plugin } from 'vite'

/** Where a discipline declares its words: every calculation uses a few of each. */
const declares = /\/shared\/[a-z]+\/(quantities|fields|point)\.ts$/
/** What is loaded by itself, by name. */
const alone = /\/shared\/[a-z]+\/[^/?]+\.calc\.ts$|\/src\/article\/figures\/[^/?]+\.tsx$/
const mark = '?used-by='
const pointImport = /import \{ at(?: as (\w+))? \} from ("|')([^"']*\/point\.ts)\2/g

type Node = { readonly type: string; readonly start: number; readonly end: number; readonly [key: string]: unknown }

/**
 * Gives each calculation and figure its own copy of the declarations it uses, so that the bundler drops all others. Shared, they would be
 * one file a discipline with every quantity that any calculator names: half of what an article with calculators would load.
 */
export function ownDeclarations(): Plugin {
  return {
    name: 'own-declarations',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId: {
      order: 'pre',
      async handler(source, importer) {
        const user = userOf(importer)
        if (user === undefined || !/\/(quantities|fields|point)\.ts$/.test(source)) return null
        const found = await this.resolve(source, importer, { skipSelf: true })
        return found && declares.test(found.id) ? found.id + mark + user : null
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
