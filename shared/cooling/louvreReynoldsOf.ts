import { formula, type About } from '../formula/formula.ts'
import { airViscosityOf, coreAir, coreFlowArea, louvrePitch, louvreReynolds } from './quantities.ts'

/** Mass flow for each area times louvre pitch over viscosity. */
export const about = {
  name: 'Reynolds number on the louvre’s pitch',
  in: { air: coreAir, area: coreFlowArea, pitch: louvrePitch, viscosity: airViscosityOf },
  out: louvreReynolds,
  equation: 'air / area * pitch / viscosity',
  source: ['definition', 'of the Reynolds number'],
} as const satisfies About

export const louvreReynoldsOf = formula<typeof about>('louvre-reynolds-of', {}, ({ air, area, pitch, viscosity }) => ((air / area) * pitch) / viscosity)
