import { largeMap } from '@trochoid/compute/data/maps/large.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'

/** The maps that come with the handbook: made by code, of no machine that anyone makes. */
export const invented: Readonly<Record<string, CompressorMap>> = { small: smallMap, medium: mediumMap, large: largeMap }
