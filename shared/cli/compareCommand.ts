import { margins } from '../build/everything.ts'
import { weighMargins } from '../build/margins.ts'
import { solveBuild } from '../build/solve.ts'
import { compare } from '../comparison/compare.ts'
import { type Side } from '../comparison/side.ts'
import { BadInput } from './badInput.ts'
import { sheetFrom } from './sheetFrom.ts'
import { type Workshop } from './workshop.ts'

/** Two builds side by side. */
export async function compareCommand(shop: Workshop, args: readonly string[], readFile: (path: string) => string) {
  const [first, second, ...more] = args
  if (!first || !second || more.length > 0) throw new BadInput('file', 'Name two builds: files, links, or street, track, faulty.')
  const side = async (name: string): Promise<Side> => {
    const sheet = await sheetFrom(name, shop, readFile)
    const solved = solveBuild(sheet)
    return { sheet, solved, weighed: weighMargins(margins, solved, sheet) }
  }
  const [a, b] = [await side(first), await side(second)]
  const { says, differs, moved } = compare(a, b, shop.fields)
  return {
    first: a.sheet.name, second: b.sheet.name, says,
    differs: differs.map(({ path, name, before, after, sourceOnly }) => ({ path, name, before, after, sourceOnly })),
    moved: moved.map(({ id, before, after, change, turn }) => ({ id, title: before.margin.title, turn, before: before.state, after: after.state, leftBefore: before.left, leftAfter: after.left, change, as: before.margin.as, tight: before.tight })),
    same: a.weighed.length - moved.length,
  }
}
