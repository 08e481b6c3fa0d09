import type { APIRoute } from 'astro'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { jsonSchema } from '@trochoid/compute/build/schema.ts'
import { url } from '../url.ts'

/** JSON Schema of a build file, at an address that stays. */
export const GET: APIRoute = ({ site }) => {
  const address = url('/build.schema.json')
  return new Response(JSON.stringify(jsonSchema(allFields, site ? new URL(address, site).href : address), null, 2), { headers: { 'content-type': 'application/schema+json' } })
}
