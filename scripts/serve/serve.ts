import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { join } from 'node:path'
import { bodyOf } from './body.ts'
import { find } from './find.ts'
import { listen } from './listen.ts'

/** One answer of the server, for those who count bytes. */
export type Sent = { path: string; status: number; bytes: number }

export type Served = { url: string; port: number; close: () => Promise<void> }

type Options = {
  /** The folder of the built site. */
  dir: string
  /** The path the site lives under, with a slash at both ends. */
  base?: string
  /** The port wanted; 0 takes any free one. */
  port?: number
  onSent?: (sent: Sent) => void
}

function pathOf(request: IncomingMessage): string | undefined {
  try {
    return decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname)
  } catch {
    return undefined
  }
}

/** Serves a folder as a plain file host would: compressed, with its own "not found" page, below the base path. */
export async function serve({ dir, base = '/', port = 0, onSent }: Options): Promise<Served> {
  async function send(request: IncomingMessage, response: ServerResponse, path: string, file: string, status: number) {
    const { bytes, type, tag, encoding } = await bodyOf(file, String(request.headers['accept-encoding'] ?? ''))
    // Names under assets/ carry a hash of what is in them; everything else must be asked for anew.
    const cache = path.startsWith(`${base}assets/`) && status === 200 ? 'public, max-age=31536000, immutable' : 'no-cache'
    response.setHeader('Content-Type', type)
    response.setHeader('Cache-Control', cache)
    response.setHeader('ETag', tag)
    response.setHeader('Vary', 'Accept-Encoding')
    response.setHeader('X-Content-Type-Options', 'nosniff')
    if (status === 200 && request.headers['if-none-match'] === tag) {
      response.writeHead(304).end()
      onSent?.({ path, status: 304, bytes: 0 })
      return
    }
    if (encoding) response.setHeader('Content-Encoding', encoding)
    response.writeHead(status, { 'Content-Length': bytes.length })
    response.end(request.method === 'HEAD' ? undefined : bytes)
    onSent?.({ path, status, bytes: request.method === 'HEAD' ? 0 : bytes.length })
  }

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (request.method !== 'GET' && request.method !== 'HEAD') return void response.writeHead(405, { Allow: 'GET, HEAD' }).end()
    const path = pathOf(request)
    if (path === undefined || path.includes('\0')) return void response.writeHead(400).end()
    if (base !== '/' && (path === '/' || `${path}/` === base)) return void response.writeHead(302, { Location: base }).end()
    const found = path.startsWith(base) ? await find(dir, `/${path.slice(base.length)}`) : undefined
    if (found && 'file' in found) return send(request, response, path, found.file, 200)
    if (found) return void response.writeHead(301, { Location: encodeURI(base + found.redirect.slice(1)) }).end()
    const missing = await find(dir, '/404.html')
    if (missing && 'file' in missing) return send(request, response, path, join(dir, '404.html'), 404)
    response.writeHead(404).end()
  }

  const server = createServer((request, response) => {
    answer(request, response).catch((error: unknown) => {
      console.error(error)
      if (!response.headersSent) response.writeHead(500)
      response.end()
    })
  })
  const got = await listen(server, port)
  const close = () => new Promise<void>((resolve) => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
  return { url: `http://localhost:${got}${base}`, port: got, close }
}
