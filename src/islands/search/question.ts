import { oneEdit } from './oneEdit.ts'
import { parts, split, stem, type Words } from './words.ts'

/** One thing that is asked for: what was typed, and other words for it. Any of them will do. */
export type Asked = { readonly typed: string; readonly ways: readonly (readonly string[])[]; /** The last word may still be being typed. */ readonly unfinished: boolean; /** A number, which helps where it is met and asks for nothing by itself. */ readonly helps?: true }

const longest = 4
const bare = /^\d+([.,]\d+)?$/

/** A question in plain words, read with the words of the trade. A plain number tells nothing by itself. */
export function question(text: string, { filler, spelt, patterns, called }: Words): readonly Asked[] {
  const idle = new Set(filler.split(' '))
  const typed = split(text.slice(0, 200)).slice(0, 16)
  const stems = (words: string) => words.split(' ').flatMap(parts).map((word) => stem(word, spelt))
  const told: Asked[] = []
  const covered = new Set<number>()
  const more = new Map<number, string[][]>()
  const known = new Map(Object.entries(called).map(([words, ours]) => [words.split(' ').map((word) => stem(word, spelt)).join(' '), stems(ours)]))
  // Longest first: "turbo lag" says more than "lag".
  for (let length = longest; length > 0; length--) {
    for (let at = 0; at + length <= typed.length; at++) {
      const ours = known.get(typed.slice(at, at + length).map((word) => stem(word, spelt)).join(' '))
      if (!ours || covered.has(at)) continue
      for (let i = at; i < at + length; i++) { covered.add(i); more.set(i, [ours]) }
    }
  }
  // A slip of the finger in what people call it.
  typed.forEach((word, i) => {
    const stemmed = stem(word, spelt)
    const meant = covered.has(i) || stemmed.length < 5 ? undefined : [...known].find(([words]) => words.length > 4 && oneEdit(words, stemmed))
    if (meant) more.set(i, [meant[1]])
  })
  typed.forEach((word, i) => {
    const about = patterns.find(([pattern]) => new RegExp(pattern).test(word))
    const others = [...(more.get(i) ?? []), ...(about ? [stems(about[1])] : [])]
    if (others.length === 0 && idle.has(word)) return
    if (others.length === 0 && bare.test(word)) { told.push({ typed: word, ways: [[word]], unfinished: false, helps: true }); return }
    if (/^(?!\d)/.test(word) || others.length > 0) told.push({ typed: word, ways: [parts(word).map((part) => stem(part, spelt)), ...others], unfinished: i === typed.length - 1 && !/\s$/.test(text) })
  })
  // Nothing but small words: then they are what is asked.
  return told.some(({ helps }) => !helps) ? told : typed.filter((word) => !bare.test(word)).map((word) => ({ typed: word, ways: [[stem(word, spelt)]], unfinished: true }))
}
