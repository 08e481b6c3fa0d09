import { createServer } from 'node:http'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliDecompressSync } from 'node:zlib'
import { request } from 'node:http'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { listen } from '../../scripts/serve/listen.ts'
import { serve, type Sent, type Served } from '../../scripts/serve/serve.ts'

const parent = mkdtempSync(join(tmpdir(), 'serve-'))
const dir = join(parent, 'site')
const words = 'A rotor turns at a third of shaft speed. '.repeat(200)
const sent: Sent[] = []
let site: Served

type Answer = { status: number; headers: Record<string, unknown>; body: Buffer }

/** Asks for a path as written: `fetch` would tidy away what is to be tested. */
function ask(path: string, headers: Record<string, string> = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request({ port: site.port, path, headers }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part))
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(parts) }))
    }).on('error', reject).end()
  })
}

beforeAll(async () => {
  mkdirSync(join(dir, 'margins'), { recursive: true })
  mkdirSync(join(dir, 'assets'))
  writeFileSync(join(parent, 'secret.txt'), 'not for readers')
  writeFileSync(join(dir, 'index.html'), words)
  writeFileSync(join(dir, '404.html'), 'no such page')
  writeFileSync(join(dir, 'margins', 'index.html'), 'margins')
  writeFileSync(join(dir, 'assets', 'one.js'), 'export {}')
  site = await serve({ dir, base: '/handbook/', onSent: (one) => sent.push(one) })
})

afterAll(async () => {
  await site.close()
  rmSync(parent, { recursive: true })
})

it('sends a page compressed, and counts what it sent', async () => {
  sent.length = 0
  const { status, headers, body } = await ask('/handbook/', { 'accept-encoding': 'gzip, br' })
  expect(status).toBe(200)
  expect(headers['content-encoding']).toBe('br')
  expect(brotliDecompressSync(body).toString()).toBe(words)
  expect(sent).toEqual([{ path: '/handbook/', status: 200, bytes: body.length }])
})

it('sends a page as it is to those who cannot unpack it', async () => {
  const { headers, body } = await ask('/handbook/')
  expect(headers['content-encoding']).toBeUndefined()
  expect(body.toString()).toBe(words)
})

it('leads from the root to the base, and from a folder to its page', async () => {
  expect((await ask('/')).headers.location).toBe('/handbook/')
  expect((await ask('/handbook/margins')).headers.location).toBe('/handbook/margins/')
  expect((await ask('/handbook/margins/')).body.toString()).toBe('margins')
})

it('answers what it does not have with the page for that', async () => {
  const { status, body } = await ask('/handbook/no/such/')
  expect(status).toBe(404)
  expect(body.toString()).toBe('no such page')
})

it.each(['/handbook/../secret.txt', '/handbook/%2e%2e/secret.txt', '/handbook/..%2fsecret.txt', '/handbook/%00', '/handbook/%zz'])(
  'gives nothing away for %s', async (path) => {
    const { status, body } = await ask(path)
    expect(status).toBeGreaterThanOrEqual(400)
    expect(body.toString()).not.toContain('not for readers')
  })

it('lets only files whose names change with them be kept unasked', async () => {
  expect((await ask('/handbook/assets/one.js')).headers['cache-control']).toContain('immutable')
  const { headers } = await ask('/handbook/margins/')
  expect(headers['cache-control']).toBe('no-cache')
  expect((await ask('/handbook/margins/', { 'if-none-match': String(headers.etag) })).status).toBe(304)
})

it('takes a free port when the wanted one is busy', async () => {
  const other = createServer()
  const port = await listen(other, site.port)
  expect(port).not.toBe(site.port)
  other.close()
})
