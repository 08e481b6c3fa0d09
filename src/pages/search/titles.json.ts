import { getEntry } from 'astro:content'
import { titles } from '../../components/found.ts'

/** What search answers the first key from. */
export const GET = async (): Promise<Response> => {
  const { filler, spelt, patterns, called } = (await getEntry('search', 'words'))!.data
  return Response.json({ words: { filler, spelt, patterns, called }, entries: (await titles()).map(({ kind, title, url, also }) => (also ? [kind, title, url, also] : [kind, title, url])) })
}
