import { formula, type About } from '../formula/formula.ts'
import { compressorMap, correctedSpeed, speedOverLowestLine } from './quantities.ts'

/** Where a speed lies above or below the lowest speed line of a compressor map. */
export const about = {
  name: 'Speed over that of the lowest line',
  in: { map: compressorMap, speed: correctedSpeed },
  out: speedOverLowestLine,
  steps: ['Divide the corrected speed by that of the map’s first speed line. Below one, nothing was measured there and the reading is an estimate.'],
  source: ['definition', 'the lowest speed at which the map was measured'],
} as const satisfies About

export const overLowestLine = formula<typeof about>('over-lowest-line', {}, ({ map, speed }) => speed / map.lines[0]!.speed)
