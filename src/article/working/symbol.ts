const greek: Readonly<Record<string, string>> = {
  α: 'alpha', β: 'beta', γ: 'gamma', δ: 'delta', ε: 'varepsilon', ζ: 'zeta', η: 'eta', θ: 'theta', κ: 'kappa', λ: 'lambda', μ: 'mu', µ: 'mu', ν: 'nu',
  ξ: 'xi', π: 'pi', ρ: 'rho', σ: 'sigma', τ: 'tau', φ: 'varphi', χ: 'chi', ψ: 'psi', ω: 'omega', Δ: 'Delta', Θ: 'Theta', Λ: 'Lambda', Π: 'Pi', Σ: 'Sigma', Φ: 'Phi', Ψ: 'Psi', Ω: 'Omega', Γ: 'Gamma',
}
const letters = (text: string): string => text.replace(/\p{Script=Greek}|µ/gu, (letter) => (greek[letter] ? `\\${greek[letter]} ` : letter))
const word = (text: string): string => (/^\p{L}{2,}$/u.test(text) ? `\\mathrm{${text}}` : letters(text).trim())

/** A symbol as quantities declare it, `Δp_0` or `η_v`, in TeX: words and subscripts of more than one letter upright. */
export function symbolTex(symbol: string): string {
  const [head = '', ...below] = symbol.split('_')
  const base = /^[A-Za-z]{3,}$/.test(head) ? `\\mathrm{${head}}` : letters(head).trim()
  return below.length === 0 ? base : `${base}_{${below.map((part) => part.split(',').map(word).join(',')).join(',')}}`
}
