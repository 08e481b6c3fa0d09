import { getCollection, type CollectionEntry } from 'astro:content'

export type Chapter = { readonly theme: CollectionEntry<'themes'>; readonly number: number; readonly articles: readonly CollectionEntry<'articles'>[] }

/** The chapters in order, each with its articles in order. */
export async function chapters(): Promise<readonly Chapter[]> {
  const [themes, articles] = await Promise.all([getCollection('themes'), getCollection('articles')])
  return themes.sort((a, b) => a.data.order - b.data.order).map((theme, i) => ({
    theme,
    number: i + 1,
    articles: articles.filter(({ data }) => data.theme.id === theme.id).sort((a, b) => a.data.order - b.data.order),
  }))
}

/** Every article in reading order. */
export const inOrder = async (): Promise<readonly CollectionEntry<'articles'>[]> => (await chapters()).flatMap(({ articles }) => articles)
