import { largeMap } from './large.ts'
import { mediumMap } from './medium.ts'
import { smallMap } from './small.ts'
import { twinMap } from './twin.ts'

/** The invented maps that come with the handbook. */
export const inventedMaps = { small: smallMap, medium: mediumMap, large: largeMap, twin: twinMap } as const
