/** What is read of a MathML element, so that it can be tested without a browser. */
export type MathElement = { readonly localName: string; readonly children: ArrayLike<MathElement>; readonly textContent: string | null; getAttribute(name: string): string | null }

const greek = 'alpha beta gamma delta varepsilon zeta eta theta iota kappa lambda mu nu xi omicron pi rho varsigma sigma tau upsilon varphi chi psi omega'.split(' ')
const functions = /^(exp|log|ln|sin|cos|tan|tanh|min|max)$/
const signs: Readonly<Record<string, readonly [tex: string, plain: string]>> = { '⋅': ['\\cdot ', ' * '], '×': ['\\times ', ' * '], '−': ['-', ' - '], '∗': ['*', ' * '], '⁡': ['', ''], '′': ['\\prime ', "'"], '+': ['+', ' + '], '=': ['=', ' = '], ',': [',', ', '] }

/** An equation of the page in TeX. */
export function texOf(node: MathElement): string {
  const text = node.textContent ?? ''
  const [a, b, c] = Array.from(node.children, texOf) as [string, string, string]
  switch (node.localName) {
    case 'mfrac': return `\\frac{${a}}{${b}}`
    case 'msqrt': return `\\sqrt{${Array.from(node.children, texOf).join('')}}`
    case 'msub': return `{${a}}_{${below(node)}}`
    case 'msup': return `{${a}}^{${b}}`
    case 'msubsup': return `{${a}}_{${below(node)}}^{${c}}`
    case 'mtext': return `\\text{${text.replace(/[%#&_$]/g, '\\$&')}}`
    case 'mi': return functions.test(text) ? `\\${text} ` : text.length > 1 ? `\\mathrm{${text}}` : letter(text)
    case 'mo': return text === '|' ? `\\${node.getAttribute('form') === 'prefix' ? 'left' : 'right'}|` : signs[text]?.[0] ?? text
    default: return node.children.length > 0 ? Array.from(node.children, texOf).join('') : text
  }
}

/** A subscript: `max` there is a word, no function. */
const below = ({ children: { 1: sub } }: MathElement): string => (sub!.localName === 'mi' && functions.test(sub!.textContent!) ? `\\mathrm{${sub!.textContent!}}` : texOf(sub!))

function letter(text: string): string {
  const small = greek[text.charCodeAt(0) - 0x3b1]
  const large = greek[text.charCodeAt(0) - 0x391]?.replace('var', '')
  if (small) return `\\${small} `
  if (large) return `\\${large[0]!.toUpperCase()}${large.slice(1)} `
  return text === '∞' ? '\\infty ' : text
}

/** An equation of the page on one line of plain text. */
export function plainOf(node: MathElement): string {
  const text = node.textContent ?? ''
  const children = Array.from(node.children)
  const [a, b, c] = children.map((child) => bracketed(plainOf(child))) as [string, string, string]
  switch (node.localName) {
    case 'mfrac': return `${a} / ${b}`
    case 'msqrt': return `sqrt(${children.map(plainOf).join('')})`
    case 'msub': return `${a}_${plainOf(children[1]!)}`
    case 'msup': return `${a}^${b}`
    case 'msubsup': return `${a}_${plainOf(children[1]!)}^${c}`
    case 'mo': return signs[text]?.[1] ?? text
    default: return children.length > 0 ? children.map(plainOf).join('') : text
  }
}
/** In brackets where a sign would else reach too far; a value with its unit, `12 mm`, is one thing. */
const bracketed = (text: string): string => (/ [*/+=-] /.test(outside(text)) ? `(${text})` : text)
const outside = (text: string): string => { const less = text.replace(/\([^()]*\)/g, ''); return less === text ? text : outside(less) }
