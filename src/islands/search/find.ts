import type { Asked } from './question.ts'
import { oneEdit } from './oneEdit.ts'
import { parts, split, stem, type Words } from './words.ts'

export const kinds = ['article', 'calculator', 'quantity', 'glossary', 'table', 'symptom', 'page'] as const
export type Kind = (typeof kinds)[number]
/** One thing that can be found: a page, or a place on one. */
export type Entry = { readonly kind: Kind; readonly title: string; /** Below the base. */ readonly url: string; /** Other words for it. */ readonly also?: string; /** What it says. */ readonly text?: string }
export type Found = { readonly entry: Entry; readonly score: number }

/** How much a word counts by where it stands, and how much a thing counts by what it is: an answer before a word, a word before its unit. */
const places = { title: 1, also: 0.85, text: 0.5 } as const
/** A sign is a whole sentence: each of its words says less than one of a title. */
const ofSign = 0.7
const prior: Readonly<Record<Kind, number>> = { article: 0.06, calculator: 0.05, table: 0.05, glossary: 0.03, page: 0.02, quantity: -0.06, symptom: -0.02 }

export type Index = { readonly entries: readonly Entry[]; readonly holds: ReadonlyMap<string, ReadonlyMap<number, number>>; readonly titleLength: readonly number[] }

export function index(entries: readonly Entry[], { spelt, filler }: Words): Index {
  const holds = new Map<string, Map<number, number>>()
  const idle = new Set(filler.split(' '))
  const titleLength: number[] = []
  entries.forEach((entry, i) => {
    const put = (text: string | undefined, weight: number): Set<string> => {
      const words = new Set(split(text ?? '').flatMap(parts).filter((word) => !idle.has(word)).map((word) => stem(word, spelt)))
      for (const word of words) {
        let by = holds.get(word)
        if (!by) holds.set(word, by = new Map())
        by.set(i, Math.max(by.get(i) ?? 0, weight))
      }
      return words
    }
    titleLength.push(put(entry.title, entry.kind === 'symptom' ? ofSign : places.title).size || 1)
    put(entry.also, places.also)
    put(entry.text, places.text)
  })
  return { entries, holds, titleLength }
}

/** Which entries hold a word, or one that begins with it, or one that is a slip of the finger away. */
function holding({ holds }: Index, word: string, unfinished: boolean): ReadonlyMap<number, number> {
  const got = new Map<number, number>()
  const add = (by: ReadonlyMap<number, number>, worth: number) => { for (const [i, weight] of by) got.set(i, Math.max(got.get(i) ?? 0, weight * worth)) }
  const exact = holds.get(word)
  if (exact) add(exact, 1)
  for (const [other, by] of holds) {
    if (other === word) continue
    if (other.startsWith(word) && word.length >= (unfinished ? 1 : 4)) add(by, unfinished ? 0.7 : 0.55)
    else if (word.startsWith(other) && other.length >= 5) add(by, 0.55)
    else if (!exact && word.length >= 4 && oneEdit(word, other)) add(by, 0.6)
  }
  return got
}

/** The entries that answer best, best first. A word that few hold tells more than one that many do. */
export function find(of: Index, asked: readonly Asked[]): readonly Found[] {
  const { entries, titleLength } = of
  const score = new Float64Array(entries.length)
  const inTitle = new Float64Array(entries.length)
  let whole = 0
  for (const { ways, unfinished, helps } of asked) {
    const best = new Map<number, number>()
    ways.forEach((words, way) => {
      const each = words.map((word) => (helps ? of.holds.get(word) ?? new Map<number, number>() : holding(of, word, unfinished && way === 0)))
      for (const i of new Set(each.flatMap((got) => [...got.keys()]))) {
        const mean = each.reduce((sum, got) => sum + (got.get(i) ?? 0), 0) / words.length
        best.set(i, Math.max(best.get(i) ?? 0, mean * (way === 0 ? 1 : 0.95)))
      }
    })
    const strong = [...best.values()].filter((value) => value > 0.4).length
    const tells = helps ? 0.8 : Math.log(1 + entries.length / (1 + strong))
    if (!helps) whole += tells
    for (const [i, value] of best) {
      score[i]! += tells * value
      if (value > 0.5) inTitle[i]! += value
    }
  }
  if (whole === 0) return []
  return entries.map((entry, i): Found => ({
    entry, score: score[i]! === 0 ? 0 : score[i]! / whole + 0.15 * Math.min(1, inTitle[i]! / titleLength[i]!) + prior[entry.kind],
  })).filter(({ score }) => score > 0.22).sort((a, b) => b.score - a.score)
}
