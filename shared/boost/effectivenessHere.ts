import { coolerEffectiveness } from './coolerEffectiveness.ts'
import { coolerEffectivenessInAir } from './coolerEffectivenessInAir.ts'
import { airOverCooler } from './airOverCooler.ts'
import { coolerUnitsFrom } from './coolerUnitsFrom.ts'

/** Effectiveness by the cooling air that the rating states, or with plentiful air where it states none. */
export function effectivenessHere(x: { readonly flow: number; readonly ratedFlow: number; readonly ratedEffectiveness: number; readonly ratedAir: number | null; readonly coreAir: number; readonly coverage: number }): number {
  const { flow, ratedFlow, ratedEffectiveness, ratedAir, coreAir, coverage } = x
  const air = ratedAir === null ? 0 : airOverCooler({ air: coreAir, coverage })
  if (ratedAir === null || !(air > 0)) return coolerEffectiveness({ flow, ratedFlow, ratedEffectiveness })
  return coolerEffectivenessInAir({ units: coolerUnitsFrom({ effectiveness: ratedEffectiveness, flow: ratedFlow, air: ratedAir }), flow, ratedFlow, air, ratedAir })
}
