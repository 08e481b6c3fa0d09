import type { APIRoute } from 'astro'
import { tables } from '../../components/tables/all.ts'
import { csv } from '../../islands/parts/files.ts'

export const getStaticPaths = () => tables.map(({ id }) => ({ params: { id } }))

/** Numbers as a spreadsheet reads them: no thin commas, and the minus sign of the keyboard. */
const bare = (text: string): string => (/^−?[\d,]+(\.\d+)?$/.test(text) ? text.replace('−', '-').replaceAll(',', '') : text)

export const GET: APIRoute = ({ params }) => {
  const { title, parts } = tables.find(({ id }) => id === params['id'])!
  const rows = parts.flatMap((part, i) => [...(i > 0 ? [[]] : []), [`${title}: ${part.title}`], [...part.head], ...part.rows.map((row) => row.map(bare))])
  return new Response(`${csv(rows)}\r\n`, { headers: { 'content-type': 'text/csv; charset=utf-8' } })
}
