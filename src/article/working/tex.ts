import { parseEquation } from '@trochoid/compute/formula/evaluate.ts'
import type { ConstantNode, MathNode, OperatorNode, SymbolNode } from 'mathjs'

/**
 * Where a name of an equation stands in its TeX: `\v{i.drop}` for an input, `\v{o.out}` for an output, `\v{c.g}` for a constant.
 * Each is later put in as a symbol, or as a slot for its value.
 */
export const token = (place: 'i' | 'o' | 'c', name: string): string => `\\v{${place}.${name}}`
export const tokens = /\\v\{([\w.]+)\}/g

/** An equation that mathjs reads, in TeX; `places` tells which of its names are inputs, outputs and constants. */
export function equationTex(equation: string, places: ReadonlyMap<string, string>): string {
  const handler = (node: MathNode, options: object): string | undefined => {
    if (node.type === 'SymbolNode') {
      const { name } = node as SymbolNode
      return places.get(name) ?? (name === 'pi' ? '\\pi ' : undefined)
    }
    if (node.type === 'OperatorNode' && (node as OperatorNode).op === '^') {
      const [base, power] = (node as OperatorNode).args as [MathNode, MathNode]
      if (power.type === 'ConstantNode' && (power as ConstantNode).value === 0.5) return `\\sqrt{${bare(base).toTex(options)}}`
    }
    if (node.type === 'ConstantNode') return numberTex((node as ConstantNode<number>).value)
    return undefined
  }
  return parseEquation(equation).toTex({ parenthesis: 'auto', handler }).replaceAll('~', '\\,')
}

const bare = (node: MathNode): MathNode => (node.type === 'ParenthesisNode' ? (node as unknown as { content: MathNode }).content : node)

function numberTex(value: unknown): string {
  const text = typeof value === 'number' && value !== 0 && Math.abs(value) < 1e-3 ? value.toExponential() : String(value)
  const [mantissa, power] = text.split('e') as [string, string | undefined]
  return power === undefined ? text : `${mantissa === '1' ? '' : `${mantissa}\\times `}10^{${Number(power)}}`
}
