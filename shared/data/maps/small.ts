import { inventedMap } from './inventedMap.ts'

/** Invented: a small single compressor. No machine that anyone makes. */
export const smallMap = inventedMap({ name: 'Invented small compressor', topSpeed: 160_000, topRatio: 3.0, surgeFlow: 0.15, chokeFlow: 0.38, bestEfficiency: 0.75 })
