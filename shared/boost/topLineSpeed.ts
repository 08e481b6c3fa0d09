import { formula, type About } from '../formula/formula.ts'
import { compressorMap, correctedSpeed } from './quantities.ts'

/** Corrected speed of the highest line of a compressor map. */
export const about = {
  name: 'Speed of the top line of a map',
  in: { map: compressorMap },
  out: correctedSpeed,
  steps: ['Take the corrected speed of the last speed line.'],
  source: ['definition', 'the highest speed at which the map was measured'],
  notes: 'A compressor may stand more speed than its map shows, or less: only its maker knows.',
} as const satisfies About

export const topLineSpeed = formula<typeof about>('top-line-speed', {}, ({ map }) => map.lines[map.lines.length - 1]!.speed)
