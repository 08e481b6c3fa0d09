import { type Plugin } from 'vite'

/** What a calculation says to its reader; the solver only computes. */
const said = new Set(['title', 'asks', 'article', 'cautions', 'curve', 'says', 'leavesOut'])

type Node = { readonly type: string; readonly start: number; readonly end: number; readonly [key: string]: unknown }

/** Leaves the words of calculations out of the solver's bundle: about a tenth of what a phone would have to fetch. */
export function withoutWords(): Plugin {
  return {
    name: 'calculations-without-words',
    enforce: 'post',
    transform(code, id) {
      if (!/\.calc\.ts$/.test(id.split('?')[0]!)) return null
      const program = this.parse(code) as unknown as { body: Node[] }
      const exported = program.body.find((node) => node.type === 'ExportDefaultDeclaration')
      const spec = (exported?.['declaration'] as { arguments?: { properties?: Node[] }[] } | undefined)?.arguments?.[0]?.properties ?? []
      let out = code
      for (const property of [...spec].reverse()) {
        if (!said.has((property['key'] as { name?: string } | undefined)?.name ?? '')) continue
        const rest = /^\s*,/.exec(out.slice(property.end))
        out = out.slice(0, property.start) + out.slice(property.end + (rest ? rest[0].length : 0))
      }
      return { code: out, map: null }
    },
  }
}
