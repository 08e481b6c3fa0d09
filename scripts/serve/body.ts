import { createHash } from 'node:crypto'
import { readFile, stat } from 'node:fs/promises'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'
import { isText, typeOf } from './types.ts'

const brotli = promisify(brotliCompress)
const gzipped = promisify(gzip)

/** A file ready to be sent. */
export type Body = { bytes: Buffer; type: string; tag: string; encoding?: 'br' | 'gzip' }

/** Compressing well takes time, so each file is compressed once for as long as it does not change. */
const kept = new Map<string, Promise<Body>>()

/** Bytes above which the last percents of compression would take longer than a reader waits: packs of pages, 400 kB each. */
const large = 300_000

async function pack(file: string, encoding: Body['encoding']): Promise<Body> {
  const raw = await readFile(file)
  const type = typeOf(file)
  const tag = `"${createHash('sha256').update(raw).digest('base64url').slice(0, 16)}${encoding ?? ''}"`
  if (encoding === undefined || !isText(type)) return { bytes: raw, type, tag }
  const bytes = encoding === 'br'
    ? await brotli(raw, { params: { [constants.BROTLI_PARAM_QUALITY]: raw.length > large ? 9 : 11, [constants.BROTLI_PARAM_SIZE_HINT]: raw.length } })
    : await gzipped(raw, { level: 9 })
  return { bytes, type, tag, encoding }
}

/** Reads a file in the best compression the client accepts. */
export async function bodyOf(file: string, accepts: string): Promise<Body> {
  const encoding = /\bbr\b/.test(accepts) ? 'br' : /\bgzip\b/.test(accepts) ? 'gzip' : undefined
  const { mtimeMs, size } = await stat(file)
  const key = [file, mtimeMs, size, encoding].join('\n')
  const body = kept.get(key) ?? pack(file, encoding)
  kept.set(key, body)
  return body
}
