import { inventedMap } from './inventedMap.ts'

/** Invented: a large single compressor. No machine that anyone makes. */
export const largeMap = inventedMap({ name: 'Invented large compressor', topSpeed: 112_000, topRatio: 3.5, surgeFlow: 0.32, chokeFlow: 0.8, bestEfficiency: 0.77 })
