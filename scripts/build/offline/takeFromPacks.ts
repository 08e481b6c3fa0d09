import type { Packed, Packs } from './packs.ts'

/** What is used of the worker this runs in. */
export type Worker = {
  fetch: (request: Request | string, init?: RequestInit) => Promise<Response>
  readonly location: { readonly href: string }
  readonly clients: { readonly matchAll: (of: { includeUncontrolled: boolean }) => Promise<readonly { readonly postMessage: (said: unknown) => void }[]> }
  readonly addEventListener: (name: 'install' | 'activate', told: () => void) => void
}

/**
 * Runs at the head of the service worker. While that puts the site by, each file it asks the network for is taken out of its pack instead, and the
 * packs are fetched one at a time. Files that were put by before are not asked for, so what was cut off goes on where it stopped.
 *
 * Its text is copied into the worker: it may use nothing from outside itself.
 */
export function takeFromPacks(worker: Worker, packs: Packs): void {
  const network = worker.fetch.bind(worker)
  const site = new URL('.', worker.location.href)
  const names = Object.keys(packs)
  const packOf = new Map(names.flatMap((pack) => packs[pack]!.map((file) => [new URL(file, site).href, { pack, file }] as const)))
  let installing = false
  let open: { readonly pack: string; readonly files: Promise<Readonly<Record<string, Packed>>> } | undefined
  worker.addEventListener('install', () => { installing = true })
  worker.addEventListener('activate', () => { installing = false; open = undefined })

  async function unpack(pack: string): Promise<Readonly<Record<string, Packed>>> {
    // Told to every page that shows how far it is; whether any listens is their own affair.
    void worker.clients.matchAll({ includeUncontrolled: true }).then((pages) => { for (const page of pages) page.postMessage({ keeping: names.indexOf(pack), of: names.length }) })
    // Not in the browser's own store too: its files go into ours.
    const answer = await network(new URL(pack, site).href, { cache: 'no-store', credentials: 'same-origin' })
    if (!answer.ok) throw new Error(`${pack}: ${answer.status}`)
    return await answer.json() as Readonly<Record<string, Packed>>
  }

  worker.fetch = async (request, init) => {
    const asked = new URL(typeof request === 'string' ? request : request.url)
    asked.search = ''
    const place = installing ? packOf.get(asked.href) : undefined
    if (!place) return network(request, init)
    if (open?.pack !== place.pack) open = { pack: place.pack, files: unpack(place.pack) }
    const found = (await open.files)[place.file]
    if (!found) throw new Error(`${place.pack} lacks ${place.file}`)
    const body = found.text ?? Uint8Array.from(atob(found.base64!), (letter) => letter.charCodeAt(0))
    return new Response(body, { headers: { 'Content-Type': found.type } })
  }
}
