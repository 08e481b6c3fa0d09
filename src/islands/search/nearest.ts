import type { Lists } from './lists.ts'
import { split, stem } from './words.ts'

/** Titles whose words look most like what was typed, for when nothing was found. */
export function nearest(text: string, { index, words }: Lists, most = 5): readonly { readonly title: string; readonly url: string }[] {
  const asked = split(text).map((word) => stem(word, words.spelt)).filter((word) => word.length > 2).map(pairs)
  const likeness = (title: string): number => Math.max(0, ...split(title).map((word) => stem(word, words.spelt)).flatMap((word) => asked.map((one) => shared(one, pairs(word)))))
  return index.entries.map(({ title, url }) => ({ title, url, like: likeness(title) })).filter(({ like }) => like > 0.3).sort((a, b) => b.like - a.like).slice(0, most)
}

const pairs = (word: string): ReadonlySet<string> => new Set([...` ${word} `].slice(0, -1).map((letter, i) => letter + ` ${word} `[i + 1]!))
const shared = (a: ReadonlySet<string>, b: ReadonlySet<string>): number => (2 * [...a].filter((pair) => b.has(pair)).length) / (a.size + b.size)
