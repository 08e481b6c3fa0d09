import { crosses, readMap } from '../calculation/inputs.ts'
import { type CompressorMap, type SpeedLine } from '../quantity/quantity.ts'
import { writeNumber } from '../quantity/write.ts'
import { headOf } from './mapGrid.ts'

/** One thing found in a map. What is `wrong` keeps it from being used; a `doubt` is worth a second look. */
export type Finding = { readonly weight: 'wrong' | 'doubt'; readonly says: string }

/** How far head over speed squared, or flow over speed, may differ between neighbours at surge before a speed looks misread. */
const unlike = 1.35
const usual = { least: 0.6, most: 0.85 }
const mostFindings = 40

/**
 * Everything that looks wrong in a map, line by line, rather than the first fault alone: doubles, order, efficiencies above one,
 * lines that cross, surge and choke that do not move outward with speed, and speeds that do not go with the lines they stand at.
 */
export function mapFaults(map: CompressorMap): readonly Finding[] {
  const found: Finding[] = []
  const wrong = (says: string) => found.push({ weight: 'wrong', says })
  const doubt = (says: string) => found.push({ weight: 'doubt', says })
  map.lines.forEach((line, i) => {
    const name = nameOf(line)
    if (line.flow.length < 3) wrong(`${name} has ${line.flow.length === 1 ? 'one point' : `${line.flow.length} points`}; a line needs three or more.`)
    line.flow.forEach((flow, j) => {
      const at = `${name}, point ${j + 1}`
      if (j > 0 && flow === line.flow[j - 1]) wrong(`${at} has the same flow as the point before it: keep one of the two.`)
      if (line.efficiency[j]! >= 1) wrong(`${at} has an efficiency of ${writeNumber(line.efficiency[j]! * 100, 3)}\u202f%: nothing compresses without loss.`)
      if (j > 0 && line.ratio[j]! > line.ratio[j - 1]! + 0.05) wrong(`${at} has a higher pressure ratio than the point before it: along a line it falls from surge to choke.`)
    })
    const below = map.lines[i - 1]
    if (!below || line.flow.length < 2 || below.flow.length < 2) return
    if (crosses(below, line)) wrong(`${name} crosses the line below it, ${nameOf(below)}.`)
    if (line.flow[0]! < below.flow[0]!) doubt(`${name} begins at less flow than ${nameOf(below)}: surge moves to more flow as speed rises.`)
    if (line.flow.at(-1)! < below.flow.at(-1)!) doubt(`${name} ends at less flow than ${nameOf(below)}: choke moves to more flow as speed rises.`)
    const head = (headOf(line.ratio[0]!) / headOf(below.ratio[0]!)) / (line.speed / below.speed) ** 2
    if (head > unlike || head < 1 / unlike) doubt(`${name} does not go with ${nameOf(below)}: at surge its work is ${writeNumber(head, 2)} times what the square of speed would make of it. Is one of the speeds misread?`)
  })
  const best = Math.max(...map.lines.flatMap(({ efficiency }) => efficiency))
  if (best < usual.least || best > usual.most) doubt(`The best efficiency is ${writeNumber(best * 100, 2)}\u202f%; turbocharger compressors mostly reach ${usual.least * 100} to ${usual.most * 100}\u202f% (common practice, no source).`)
  const read = readMap(map, 'The map')
  if (!read.ok && !found.some(({ weight }) => weight === 'wrong')) wrong(read.says)
  return found.slice(0, mostFindings)
}

const nameOf = (line: SpeedLine): string => `The line at ${writeNumber((line.speed * 30) / Math.PI, 4)}\u202frpm`
