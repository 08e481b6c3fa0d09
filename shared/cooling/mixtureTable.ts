import { mixtures } from '../data/ethyleneGlycol.ts'

/** Reads a column of the mixture table at a share of glycol by volume: straight lines, the last one going on. Per cent in, the column's unit out. */
export function mixtureAt(column: 1 | 2, volumePercent: number): number {
  let i = 0
  while (i < mixtures.length - 2 && mixtures[i + 1]![0] <= volumePercent) i++
  const from = mixtures[i]!, to = mixtures[i + 1]!
  return from[column] + ((to[column] - from[column]) * (volumePercent - from[0])) / (to[0] - from[0])
}
