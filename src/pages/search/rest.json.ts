import { rest } from '../../components/found.ts'

/** What search finds beside titles: sentences, quantities, symptoms. */
export const GET = async (): Promise<Response> => Response.json(await rest())
