import { readSheet } from '../build/schema.ts'
import { type Sheet } from '../build/sheet.ts'
import { builds } from '../data/builds/index.ts'
import { readBuildCode } from '../link/buildLink.ts'
import { buildIn } from '../link/fragment.ts'
import { BadInput } from './badInput.ts'
import { type Workshop } from './workshop.ts'

/** A build from a file, from a link, or an invented one by name. */
export async function sheetFrom(file: string, shop: Workshop, readFile: (path: string) => string): Promise<Sheet> {
  const linked = buildIn(file)
  if (linked) {
    const read = await readBuildCode(linked.code, shop.fields)
    if (!read.ok) throw new BadInput('link', read.says)
    return read.sheet
  }
  if (Object.hasOwn(builds, file)) return builds[file as keyof typeof builds]
  let text: string
  try { text = readFile(file) } catch { throw new BadInput('file', `${file} cannot be read. Give a build file, or ${Object.keys(builds).join(', ')}.`) }
  const read = readSheet(text, shop.fields)
  if (!read.ok) throw new BadInput(read.field, read.says)
  return read.sheet
}
