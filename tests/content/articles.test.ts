import { globSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../content')
const articles = globSync('articles/**/*.mdx', { cwd: root })

/** The text below the front matter, without blocks of code. */
const prose = (source: string) => source.replace(/^---\n[\s\S]*?\n---\n/, '').replace(/^```[\s\S]*?^```/gm, '')

describe.skipIf(articles.length === 0)('articles', () => {
  it.each(articles)('%s imports nothing: its layout supplies the parts', (file) => {
    expect(prose(readFileSync(join(root, file), 'utf8'))).not.toMatch(/^(import|export)\s/m)
  })

  it('have names of their own, whatever folder they lie in', () => {
    const names = articles.map((file) => basename(file, '.mdx'))
    expect(new Set(names).size).toBe(names.length)
  })
})
