import { inventedMaps } from '@trochoid/compute/data/maps/index.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'

/** The maps that come with the handbook: made by code, of no machine that anyone makes. */
export const invented: Readonly<Record<string, CompressorMap>> = inventedMaps
