import { vi } from 'vitest'

/** A storage as browsers have it; `refuse` names what it throws when it is written to. */
export function storage(entries: Record<string, string> = {}) {
  const map = new Map(Object.entries(entries))
  const made = {
    map, refuse: null as string | null,
    getItem: (k: string) => map.get(k) ?? null,
    setItem(k: string, v: string) { if (made.refuse) throw new DOMException('no', made.refuse); map.set(k, v) },
    removeItem: (k: string) => void map.delete(k),
  }
  // Keys are enumerated as a browser's are: as the object's own.
  return new Proxy(made, { set: (target, name, value) => Reflect.set(target, name, value), ownKeys: () => [...map.keys()], getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }) })
}
type Made = ReturnType<typeof storage>

/** The stores of one tab, loaded anew, over a storage that other tabs may share. */
export async function tab(local: Made, session: Made = storage(), hash = '') {
  vi.resetModules()
  const heard = new Map<string, ((event: unknown) => void)[]>()
  vi.stubGlobal('localStorage', local)
  vi.stubGlobal('sessionStorage', session)
  vi.stubGlobal('document', { body: { dataset: { page: 'sheet' } } })
  vi.stubGlobal('navigator', {})
  vi.stubGlobal('location', { hash, pathname: '/', search: '' })
  vi.stubGlobal('addEventListener', (name: string, told: (event: unknown) => void) => heard.set(name, [...(heard.get(name) ?? []), told]))
  vi.stubGlobal('dispatchEvent', () => true)
  const own = await import('../../src/state/own.ts')
  const edit = await import('../../src/state/edit.ts')
  const tabs = await import('../../src/state/tabs.ts')
  const aside = await import('../../src/state/aside.ts')
  await own.ready
  const fire = (name: string, event: unknown = {}) => { for (const told of heard.get(name) ?? []) told(event) }
  return {
    own, edit, tabs, aside, session, fire,
    /** As when the browser tells this tab what another has written. */
    hear: (key: string) => fire('storage', { key, storageArea: local }),
    /** Makes this tab's view of the storages the one that code meets. */
    here: () => { vi.stubGlobal('localStorage', local); vi.stubGlobal('sessionStorage', session) },
  }
}
