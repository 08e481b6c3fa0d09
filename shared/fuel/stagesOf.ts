import { NoAnswer } from '../calculation/calculation.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { injectorFlowOfFluid } from './injectorFlowOfFluid.ts'
import { leastFuelOf } from './leastFuelOf.ts'
import { pulseFor } from './pulseFor.ts'
import { stageFuel } from './stageFuel.ts'
import { stageMassFlow } from './stageMassFlow.ts'
import { stageShareOf } from './stageShareOf.ts'

/** Both stages as a sheet describes them, at one pressure across each nozzle. */
export type TwoStages = {
  readonly density: number; readonly ratedDensity: number; readonly drop: number; readonly lastDrop: number
  readonly primaryFlow: number; readonly primaryRatedDrop: number; readonly primaryDeadTime: number; readonly primarySmallest: number; readonly primaries: number
  readonly secondaryFlow: number; readonly secondaryRatedDrop: number; readonly secondaryDeadTime: number; readonly secondarySmallest: number; readonly secondaries: number
}

/** Flows of both stages and how they part a charge: the chain of formulas that every plan of two stages shares. */
export function stagesOf(x: TwoStages) {
  if (x.primaries === 0) throw new NoAnswer('injector-closing-window', 'There is no primary injector: nothing feeds the rotors below hand-over.')
  if (!(x.drop > 0) || !(x.lastDrop > 0)) throw new NoAnswer('injector-closing-window', 'The manifold stands above the rail: no pressure is left across the nozzles.')
  const { density, ratedDensity } = x
  const primaryRate = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.primaryFlow, drop: x.drop, ratedDrop: x.primaryRatedDrop }), ratedDensity, density }), number: x.primaries, density })
  const secondaryRate = stageMassFlow({ flow: injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: x.secondaryFlow, drop: x.lastDrop, ratedDrop: x.secondaryRatedDrop }), ratedDensity, density }), number: x.secondaries, density })
  const fullShare = stageShareOf({ primaryFlow: primaryRate, secondaryFlow: secondaryRate })
  const primaryLeast = leastFuelOf({ smallest: x.primarySmallest, deadTime: x.primaryDeadTime, flow: primaryRate })
  const secondaryLeast = leastFuelOf({ smallest: x.secondarySmallest, deadTime: x.secondaryDeadTime, flow: secondaryRate })
  return {
    primaryRate, secondaryRate, fullShare,
    part(of: { readonly fuel: number; readonly manifold: number; readonly start: number; readonly width: number; readonly gate: number }) {
      const parts = stageFuel({ ...of, fullShare, primaryLeast, secondaryLeast })
      return {
        ...parts, primaryPulse: pulseFor({ fuel: parts.primary, flow: primaryRate, deadTime: x.primaryDeadTime }),
        secondaryPulse: parts.secondary > 0 ? pulseFor({ fuel: parts.secondary, flow: secondaryRate, deadTime: x.secondaryDeadTime }) : 0,
      }
    },
  }
}
