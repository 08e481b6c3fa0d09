import { globSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../content')
type Entry = { id: string; term: string; also?: string[]; meaning: string }
const entries = globSync('glossary/*.json', { cwd: root }).map((file) => ({ id: basename(file, '.json'), ...JSON.parse(readFileSync(join(root, file), 'utf8')) as Omit<Entry, 'id'> }))

describe('the glossary', () => {
  it('holds at least 150 words, each told in a sentence', () => {
    expect(entries.length).toBeGreaterThanOrEqual(150)
    expect(entries.filter(({ meaning }) => !/[.!?]$/.test(meaning)).map(({ id }) => id)).toEqual([])
  })

  it('leads from every spelling to one entry', () => {
    const places = new Map<string, string[]>()
    for (const { id, term, also = [] } of entries) for (const word of new Set([term, ...also].map((text) => text.toLowerCase()))) places.set(word, [...(places.get(word) ?? []), id])
    expect([...places].filter(([, ids]) => ids.length > 1)).toEqual([])
  })
})

/** The text of an article that a reader reads, with its marked words left in `<Term>`. */
const prose = (source: string) => source.replace(/^---\n[\s\S]*?\n---\n/, '').replace(/<(?!\/?Term\b)[^>]*>/g, ' ').replace(/^#.*$/gm, '')
/** Words so common in these texts that a mark at each would tell nobody anything. */
const plain = new Set(['short', 'tight', 'holds', 'charge', 'link', 'log', 'margin', 'injector', 'torque', 'rotor', 'guess', 'port', 'response', 'spacer', 'facing', 'elbow', 'duty', 'runner', 'effectiveness', 'viscosity', 'chamber', 'compressor', 'turbine'])

describe('first uses in articles', () => {
  it('lists the words of the glossary that an article uses and never marks', () => {
    const missed = globSync('articles/**/*.mdx', { cwd: root }).flatMap((file) => {
      const text = prose(readFileSync(join(root, file), 'utf8'))
      const marked = [...text.matchAll(/<Term(?: of="([^"]+)")?>([^<]+)<\/Term>/g)].flatMap(([, of, word]) => [of ?? '', word!]).map((word) => word.toLowerCase().replaceAll('-', ' '))
      const bare = text.replace(/<Term[^>]*>[^<]*<\/Term>/g, ' ').toLowerCase()
      const lacks = entries.filter(({ id, term, also = [] }) => {
        const words = [term, ...also].map((word) => word.toLowerCase())
        if (plain.has(id) || marked.some((one) => words.some((word) => one.startsWith(word.replaceAll('-', ' '))))) return false
        return new RegExp(`\\b${term.toLowerCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\b`).test(bare)
      })
      return lacks.length > 0 ? [`${basename(file)}: ${lacks.map(({ term }) => term).join(', ')}`] : []
    })
    if (missed.length > 0) console.log(`Words of the glossary used and not marked:\n  ${missed.join('\n  ')}`)
  })
})
