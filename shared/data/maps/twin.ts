import { genericMap } from '../../boost/genericMap.ts'

/** Invented: one of two small compressors that share the air. No machine that anyone makes. */
export const twinMap = genericMap({ name: 'Invented compressor for a pair', inducer: 0.043, exducer: 0.058, topTipSpeed: 480 })
