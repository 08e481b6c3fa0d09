import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import { brotliCompressSync, constants } from 'node:zlib'
import { isText, typeOf } from '../../serve/types.ts'

/** One file inside a pack: its type, and its text or its bytes in base64. */
export type Packed = { readonly type: string; readonly text?: string; readonly base64?: string }
/** Names of packs, below the site, each with the files it holds. */
export type Packs = Readonly<Record<string, readonly string[]>>

/** Before compression, in bytes: small enough that a broken connection costs little, large enough that there are few. */
const full = 400_000

/** Files of one sort side by side: what they share is then sent once. The worker asks in the same order, so that each pack is opened once. */
export const bySort = (a: string, b: string): number => extname(a).localeCompare(extname(b)) || a.localeCompare(b)

/**
 * Gathers the files that are kept on a device into packs, so that keeping hundreds of pages takes a few dozen requests and a fraction of the bytes.
 * A pack is JSON, which every host compresses; its name tells what is in it, so that one fetched before is known again.
 */
export function writePacks(dir: string, files: readonly string[]): { readonly packs: Packs; /** In bytes, as a host with Brotli sends them. */ readonly sent: number } {
  const packs: Record<string, readonly string[]> = {}
  let sent = 0
  for (const names of inPacks(dir, [...files].sort(bySort))) {
    const text = JSON.stringify(Object.fromEntries(names.map((name) => [name, packed(dir, name)])))
    const pack = `assets/kept-${createHash('sha256').update(text).digest('hex').slice(0, 10)}.json`
    writeFileSync(join(dir, pack), text)
    packs[pack] = names
    sent += brotliCompressSync(text, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }).length
  }
  return { packs, sent }
}

function inPacks(dir: string, files: readonly string[]): string[][] {
  const all: string[][] = []
  let room = 0
  for (const name of files) {
    const size = readFileSync(join(dir, name)).length
    if (size > room) { all.push([]); room = full }
    all.at(-1)!.push(name)
    room -= size
  }
  return all
}

function packed(dir: string, name: string): Packed {
  const bytes = readFileSync(join(dir, name))
  const type = typeOf(name)
  return isText(type) && type !== 'application/wasm' ? { type, text: bytes.toString('utf8') } : { type, base64: bytes.toString('base64') }
}
