import { inventedMap } from './inventedMap.ts'

/** Invented: a medium single compressor. No machine that anyone makes. */
export const mediumMap = inventedMap({ name: 'Invented medium compressor', topSpeed: 130_000, topRatio: 3.2, surgeFlow: 0.215, chokeFlow: 0.55, bestEfficiency: 0.76 })
