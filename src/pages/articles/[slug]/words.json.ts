import { getCollection } from 'astro:content'
import type { APIRoute, InferGetStaticPropsType } from 'astro'
import { marked } from '../../../article/terms.ts'

export const getStaticPaths = async () => (await getCollection('articles')).map((entry) => ({ params: { slug: entry.id }, props: { body: entry.body ?? '' } }))

/** What the words mean that an article marks, for those who peek at one without leaving the page. */
export const GET: APIRoute<InferGetStaticPropsType<typeof getStaticPaths>> = async ({ props }) =>
  Response.json(Object.fromEntries((await marked(props.body)).map(({ id, term, meaning }) => [id, [term, meaning]])))
