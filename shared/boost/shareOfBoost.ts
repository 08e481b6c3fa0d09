import { formula, type About } from '../formula/formula.ts'
import { boostPressure } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { boostShare } from './quantities.ts'

/** Part of a boost. */
export const about = {
  name: 'Part of a boost',
  in: { boost: boostPressure, share: boostShare },
  out: role(boostPressure, 'p_w', 'Boost waited for'),
  equation: 'boost * share',
  source: ['definition', 'share'],
} as const satisfies About

export const shareOfBoost = formula<typeof about>('share-of-boost', {}, ({ boost, share }) => boost * share)
