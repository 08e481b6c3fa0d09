import type { APIRoute } from 'astro'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { jsonSchema } from '@trochoid/compute/build/schema.ts'
import { url } from '../../url.ts'

/** The JSON Schema of a build file, version 1: published here for as long as such files are read. */
export const GET: APIRoute = ({ site }) => new Response(JSON.stringify(jsonSchema(allFields, new URL(url('/schema/build-1.json'), site ?? 'https://handbook.invalid').href), null, 1), { headers: { 'Content-Type': 'application/schema+json' } })
