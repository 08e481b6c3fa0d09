import { type Plugin } from 'vite'

export type Node = { readonly type: string; readonly start: number; readonly end: number; readonly [key: string]: unknown }
export type Call = Node & { readonly callee: Node; readonly arguments: readonly Node[] }
export type Cut = readonly [start: number, end: number, put: string]

/** Puts other text in place of parts of a module. */
export function cut(code: string, cuts: readonly Cut[]): { code: string; map: null } | null {
  if (cuts.length === 0) return null
  let out = code
  for (const [start, end, put] of [...cuts].sort((a, b) => b[0] - a[0])) out = out.slice(0, start) + put + out.slice(end)
  return { code: out, map: null }
}

/** Name, symbol and source of a constant: arguments that only tell the reader something. */
export const toldOf = (made: Call): Cut[] => [0, 1, 4].flatMap((i): Cut[] => { const a = made.arguments[i]; return a ? [[a.start, a.end, "''"]] : [] })

/**
 * Leaves the words of formulas and constants out of the browser's code: pages are built with them, and only functions and values are reckoned
 * with. A bundler alone keeps the words of a formula whose inputs another formula takes over.
 */
export function untold(): Plugin {
  return {
    name: 'untold',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      if (!/\/shared\/[^/]+\/[^/.]+\.ts$/.test(id.split('?')[0]!)) return null
      const { body } = this.parse(code) as unknown as { body: readonly Node[] }
      return cut(code, body.flatMap((node) => ((node['declaration'] as { declarations?: readonly Node[] } | undefined)?.declarations ?? []).flatMap((one): Cut[] => {
        const made = one['init'] as Call | null
        if (made && (one['id'] as { name?: string }).name === 'about') return [[made.start, made.end, '{}']]
        return made?.type === 'CallExpression' && made.callee['name'] === 'constant' ? toldOf(made) : []
      })))
    },
  }
}
