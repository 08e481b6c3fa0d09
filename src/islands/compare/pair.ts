/** Which two builds are laid side by side, as the address keeps it: `#first=demo:street&second=demo:track`. */
export type Pair = { readonly first: string; readonly second: string }

const name = /^(demo:)?[\w-]{1,40}$/

/** The pair of an address, of which only names are taken; what it leaves out is the build that is shown, and an invented one beside it. */
export function pairIn(address: string, chosen: string): Pair {
  const parts = new URLSearchParams(address.slice(0, 200).replace(/^[^#]*#?/, ''))
  const named = (key: string): string | null => { const value = parts.get(key); return value !== null && name.test(value) ? value : null }
  const first = named('first') ?? chosen
  return { first, second: named('second') ?? (first === 'demo:track' ? 'demo:street' : 'demo:track') }
}
export const pairAddress = ({ first, second }: Pair): string => (name.test(first) && name.test(second) ? `#first=${first}&second=${second}` : '')
