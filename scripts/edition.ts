import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.ts'

const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
const built = new Date(process.env.SOURCE_DATE_EPOCH ? Number(process.env.SOURCE_DATE_EPOCH) * 1000 : Date.now())

/** Which handbook this is, in words that a reader may cite: its version and the day it was built. */
export const edition = `${version} of ${built.toLocaleDateString('en-GB', { dateStyle: 'long', timeZone: 'UTC' })}`
