import type { Hit } from './answer.ts'
import type { Kind } from './find.ts'

const names: Readonly<Record<Kind, string>> = { article: 'Articles', calculator: 'Calculators', quantity: 'Quantities and formulas', glossary: 'Glossary', table: 'Tables', symptom: 'Symptoms', page: 'Other pages' }
const best = 3

/** The three best of all, then the others by what they are, the sort with the best answer first. */
export function show(place: HTMLElement, hits: readonly Hit[]): void {
  const groups = new Map<string, Hit[]>()
  hits.forEach((one, i) => {
    const name = i < best ? 'Best' : names[one.kind]
    groups.set(name, [...(groups.get(name) ?? []), one])
  })
  place.replaceChildren(...[...groups].flatMap(([name, list]) => {
    const heading = Object.assign(document.createElement('h2'), { textContent: name })
    const items = document.createElement('ul')
    items.append(...list.map((one) => item(one, name === 'Best')))
    return [heading, items]
  }))
}

function item({ kind, title, url, says }: Hit, told: boolean): HTMLLIElement {
  const link = Object.assign(document.createElement('a'), { href: url, textContent: title })
  const entry = document.createElement('li')
  entry.append(link)
  if (told) entry.append(Object.assign(document.createElement('span'), { className: 'small soft', textContent: ` ${names[kind]}` }))
  const text = document.createElement('p')
  text.className = 'small'
  text.append(...marked(says))
  entry.append(text)
  return entry
}

/** The excerpt with the words found set off, built of text alone: no markup of the index reaches the page. */
function marked(excerpt: string): (string | HTMLElement)[] {
  const plain = (text: string) => text.replace(/<[^>]*>/g, '').replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ({ 'amp': '&', 'lt': '<', 'gt': '>', 'quot': '"', '#39': '\'' })[name] ?? '')
  return excerpt.split(/(<mark>.*?<\/mark>)/).map((part) => (part.startsWith('<mark>') ? Object.assign(document.createElement('mark'), { textContent: plain(part) }) : plain(part)))
}

/** Nothing was found: what looks like it, and where to look without searching. */
export function showNearest(place: HTMLElement, near: readonly { readonly title: string; readonly url: string }[], base: string): void {
  const links = (list: readonly (readonly [string, string])[]) => {
    const items = document.createElement('ul')
    items.append(...list.map(([title, href]) => {
      const entry = document.createElement('li')
      entry.append(Object.assign(document.createElement('a'), { href: base + href, textContent: title }))
      return entry
    }))
    return items
  }
  const heading = (text: string) => Object.assign(document.createElement('h2'), { textContent: text })
  place.replaceChildren(
    ...(near.length > 0 ? [heading('Words that look like it'), links(near.map(({ title, url }) => [title, url] as const))] : []),
    heading('Where to look'), links([['Contents, by chapter', 'articles/'], ['Symptoms, by what is seen, heard or smelt', 'symptoms/'], ['Glossary, by letter', 'reference/glossary/'], ['Calculators, by chapter', 'calculators/']]),
  )
}
