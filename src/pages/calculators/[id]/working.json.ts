import type { APIRoute } from 'astro'
import { reachable } from '@trochoid/compute/calculation/reaches.ts'
import { demoValues } from '../../../article/demo.ts'
import { describe } from '../../../article/working/described.ts'
import { plainLines } from '../../../article/working/plain.ts'
import type { Notes } from '../../../islands/working/notes.ts'
import { registry } from '../../../registry.ts'

export const getStaticPaths = () => [...registry.calculations.keys()].map((id) => ({ params: { id } }))

/** How each step of a calculator's working is written anew and copied. */
export const GET: APIRoute = ({ params }) => {
  const of = registry.calculations.get(params['id']!)!
  const notes: Notes = Object.fromEntries(reachable(of, demoValues(of)).map((id) => {
    const known = registry.formulas.get(id)!
    const { ways, lines } = describe(known)
    return [id, { ways, tex: lines.map((line) => line.tex), plain: plainLines(known.about) }]
  }))
  return new Response(JSON.stringify(notes), { headers: { 'content-type': 'application/json' } })
}
