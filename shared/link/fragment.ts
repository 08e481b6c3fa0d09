import { longest } from './squeeze.ts'

/** The name under which an address carries a whole build, after its `#`. */
export const buildName = 'build'

/** The code of the build that an address carries; null where it carries none. `&at=` beside it names a place on the page. */
export function buildIn(address: string): { readonly code: string; readonly at: string } | null {
  const parts = address.slice(address.indexOf('#') + 1, 2 * longest).split('&')
  const named = (name: string) => parts.find((part) => part.startsWith(`${name}=`))?.slice(name.length + 1)
  const code = address.includes('#') ? named(buildName) : undefined
  return code === undefined ? null : { code, at: named('at') ?? '' }
}
export const buildFragment = (code: string, at = ''): string => `#${buildName}=${code}${at === '' ? '' : `&at=${at}`}`
