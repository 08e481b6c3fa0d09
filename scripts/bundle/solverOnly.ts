import { type Plugin } from 'vite'
import { cut, toldOf, type Call, type Cut, type Node } from './untold.ts'

/** What a calculation says to its reader; the solver only computes. */
const said = new Set(['title', 'asks', 'article', 'cautions', 'curve', 'says', 'leavesOut', 'mayLack'])

/**
 * Leaves out of the solver's bundle what only a page needs: the words of calculations, and what formulas carry for a trace, which the
 * solver never keeps. A formula becomes the plain function it is made of. About a seventh of what a phone would have to fetch.
 */
export function solverOnly(): Plugin {
  return {
    name: 'solver-only',
    enforce: 'post',
    transform(code, id) {
      const file = id.split('?')[0]!
      if (!/\/shared\/[^/]+\/[^/]+\.ts$/.test(file)) return null
      const { body } = this.parse(code) as unknown as { body: readonly Node[] }
      const cuts = file.endsWith('.margin.ts') ? articlesOf(code) : file.endsWith('.calc.ts') ? wordsOf(body, code) : file.endsWith('/point.ts') ? labelsOf(body) : tracesOf(body, code)
      return cut(code, cuts)
    },
  }
}

function wordsOf(body: readonly Node[], code: string): Cut[] {
  const exported = body.find((node) => node.type === 'ExportDefaultDeclaration')?.['declaration'] as Call | undefined
  const properties = (exported?.arguments?.[0]?.['properties'] ?? []) as readonly Node[]
  const outs = properties.find((p) => nameOf(p) === 'out')?.['value'] as Node | undefined
  // An answer that is no value of the solved point, `at.power`, is for the calculation's own page alone.
  const own = ((outs?.['properties'] ?? []) as readonly Node[]).filter((p) => p.type === 'Property' && (p['value'] as Node).type !== 'MemberExpression')
  return [...properties.filter((p) => said.has(nameOf(p))), ...own].map((p): Cut => [p.start, p.end + (/^\s*,/.exec(code.slice(p.end))?.[0].length ?? 0), ''])
}
const nameOf = (property: Node): string => (property['key'] as { name?: string } | undefined)?.name ?? ''

/** Which article explains a margin: its page was built with the address. */
const articlesOf = (code: string): Cut[] => [...code.matchAll(/\barticle:\s*(['"`])[\w-]*\1,?\s*/g)].map(({ index, 0: found }): Cut => [index, index + found.length, ''])

/** How a calculator names a value of the solved point: pages have it from the calculation. */
function labelsOf(body: readonly Node[]): Cut[] {
  const declared = body.flatMap((node) => (node['declaration'] as { declarations?: readonly Node[] } | undefined)?.declarations ?? [])
  const values = declared.flatMap((one) => ((one['init'] as Node | null)?.['properties'] ?? []) as readonly Node[]).map((p) => p['value'] as Call)
  return values.flatMap((made): Cut[] => {
    const [, shape, label] = made.callee?.['name'] === 'pointValue' ? made.arguments : []
    return shape && label ? [[shape.end, label.end, '']] : []
  })
}

function tracesOf(body: readonly Node[], code: string): Cut[] {
  return body.flatMap((node) => {
    const declared = (node['declaration'] as { declarations?: readonly Node[] } | undefined)?.declarations ?? []
    return declared.flatMap((one): Cut[] => {
      const made = one['init'] as Call | null
      if (made?.type !== 'CallExpression') return []
      const name = made.callee['name'] as string
      if (name === 'constant') return toldOf(made)
      if (name !== 'formula' || made.arguments.length !== 3) return []
      const plain = made.arguments[2]!
      return [[made.start, made.end, code.slice(plain.start, plain.end)]]
    })
  })
}
