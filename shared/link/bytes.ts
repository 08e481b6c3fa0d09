import { damaged } from './fault.ts'

/** Whole numbers, text and plain doubles one after another, as short as they can be. */
export type Writer = { readonly byte: (n: number) => void; readonly whole: (n: number) => void; readonly signed: (n: number) => void; readonly double: (n: number) => void; readonly text: (s: string) => void; readonly done: () => Uint8Array<ArrayBuffer> }
export type Reader = { readonly byte: () => number; /** Refuses a number above `most`. */ readonly whole: (most?: number) => number; readonly signed: () => number; readonly double: () => number; readonly text: (most: number) => string; readonly end: () => boolean }

export function writer(): Writer {
  const bytes: number[] = []
  const whole = (n: number): void => {
    for (; n >= 128; n = Math.floor(n / 128)) bytes.push((n % 128) + 128)
    bytes.push(n)
  }
  return {
    byte: (n) => { bytes.push(n) },
    whole,
    // Small numbers of either sign stay short: 0, -1, 1, -2 … become 0, 1, 2, 3 …
    signed: (n) => whole(n < 0 ? -2 * n - 1 : 2 * n),
    double: (n) => bytes.push(...new Uint8Array(new Float64Array([n]).buffer)),
    text: (s) => { const coded = new TextEncoder().encode(s); whole(coded.length); bytes.push(...coded) },
    done: () => new Uint8Array(bytes),
  }
}

export function reader(bytes: Uint8Array): Reader {
  let at = 0
  const take = (count: number): Uint8Array => {
    if (at + count > bytes.length) throw damaged()
    return bytes.slice(at, (at += count))
  }
  const byte = (): number => take(1)[0]!
  const whole = (most = Number.MAX_SAFE_INTEGER): number => {
    let n = 0
    for (let place = 1; ; place *= 128) {
      const b = byte()
      n += (b % 128) * place
      if (n > most || place > 128 ** 7) throw damaged()
      if (b < 128) return n
    }
  }
  return {
    byte, whole,
    signed: () => { const n = whole(); return n % 2 === 1 ? -(n + 1) / 2 : n / 2 },
    double: () => new Float64Array(take(8).buffer)[0]!,
    text: (most) => { try { return new TextDecoder('utf-8', { fatal: true }).decode(take(whole(most))) } catch { throw damaged() } },
    end: () => at === bytes.length,
  }
}
