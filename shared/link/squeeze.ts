import { damaged, LinkFault } from './fault.ts'

/** The longest code that is read, in characters: over ten times what a build with its map takes. */
export const longest = 16_384
/** Reading stops here, in bytes: a few hundred characters can be made to unfold into gigabytes. */
export const mostUnfolded = 65_536
/** Stands before the code. A form that this handbook does not know was made by a later one. */
const form = '1'

/** Bytes as text that an address carries: squeezed (RFC 1951), then in the letters of base64url (RFC 4648). */
export async function squeezed(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const small = await gathered(new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw')), Infinity)
  return form + btoa(String.fromCharCode(...small)).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
}

export async function unsqueezed(code: string): Promise<Uint8Array> {
  if (code.length > longest) throw new LinkFault(`The link is ${code.length} characters long; this handbook reads up to ${longest}. Ask for the build as a file.`)
  const [made = '', text] = [code.slice(0, 1), code.slice(1)]
  if (/^[2-9]$/.test(made)) throw new LinkFault('The link was made by a newer handbook, in a form that this copy cannot read yet.', true)
  if (made !== form || !/^[\w-]+$/.test(text)) throw damaged()
  let small: string
  try { small = atob(text.replaceAll('-', '+').replaceAll('_', '/')) } catch { throw damaged() }
  const stream = new Blob([Uint8Array.from(small, (c) => c.charCodeAt(0))]).stream().pipeThrough(new DecompressionStream('deflate-raw'))
  try { return await gathered(stream, mostUnfolded) } catch (error) { throw error instanceof LinkFault ? error : damaged() }
}

/** All that a stream gives, up to a bound: what lies beyond is never unfolded. */
async function gathered(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = []
  let length = 0
  const source = stream.getReader()
  for (let next = await source.read(); !next.done; next = await source.read()) {
    length += next.value.length
    if (length > most) {
      await source.cancel().catch(() => undefined)
      throw new LinkFault('The link unfolds into far more than a build can hold. Reading was stopped, and nothing of it was used.')
    }
    parts.push(next.value)
  }
  const all = new Uint8Array(length)
  let at = 0
  for (const part of parts) { all.set(part, at); at += part.length }
  return all
}
