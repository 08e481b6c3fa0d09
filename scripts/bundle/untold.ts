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

/** Leaves the words of constants out of the browser's code: pages are built with them, and only their values are reckoned with. */
export function untold(): Plugin {
  return {
    name: 'untold',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      if (!id.split('?')[0]!.endsWith('/shared/formula/constants.ts')) return null
      const { body } = this.parse(code) as unknown as { body: readonly Node[] }
      return cut(code, body.flatMap((node) => ((node['declaration'] as { declarations?: readonly Node[] } | undefined)?.declarations ?? []).flatMap((one) => { const made = one['init'] as Call | null; return made?.type === 'CallExpression' && made.callee['name'] === 'constant' ? toldOf(made) : [] })))
    },
  }
}
