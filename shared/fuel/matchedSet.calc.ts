import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { lambda } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { primariesPerRotor, primaryFlow, primaryRatedDrop, ratedFluidDensity, secondariesPerRotor, secondaryFlow, secondaryRatedDrop } from './fields.ts'
import { injectorFlowAt } from './injectorFlowAt.ts'
import { lambdaOfFuelChange } from './lambdaOfFuelChange.ts'
import { lessOf } from './lessOf.ts'
import { fuelSpread } from './quantities.ts'
import { setSpreadSquares } from './setSpreadSquares.ts'
import { setSpreadWorst } from './setSpreadWorst.ts'
import { stageMassFlow } from './stageMassFlow.ts'
import { stageShareOf } from './stageShareOf.ts'

export default calculation({
  id: 'matched-set',
  title: 'Matched set: spread of flow and mixture of each rotor',
  theme: 'fuel',
  asks: 'If the injectors of a set differ by so much, how far can the mixture of one rotor be from what the controller means?',
  article: 'what-an-injector-rating-means',
  cautions: ['knock', 'fuel-vapour', 'model-only'],
  in: {
    primary: free(fuelSpread, 0.03, 'Spread of the set of primaries, to either side'), secondary: free(fuelSpread, 0.03, 'Spread of the set of secondaries, to either side'),
    primaryFlow, primaries: primariesPerRotor, secondaryFlow, secondaries: secondariesPerRotor, primaryRatedDrop, secondaryRatedDrop, ratedDensity: ratedFluidDensity, lambda: engine.lambda,
  },
  out: {
    worst: role(fuelSpread, 's_w', 'Fuel of a rotor off by, at worst'), usual: role(fuelSpread, 's_q', 'Fuel of a rotor off by, root of squares'),
    leanWorst: role(lambda, 'λ_w', 'Leaner rotor, at worst'), leanUsual: role(lambda, 'λ_q', 'Leaner rotor, root of squares'),
    richWorst: role(lambda, 'λ_wr', 'Richer rotor, at worst'), primariesAlone: role(lambda, 'λ_1w', 'Leaner rotor on primaries alone, at worst'),
  },
  curve: ['primary', 'leanWorst'],
  answer({ primary, secondary, primaryFlow: rated1, primaries, secondaryFlow: rated2, secondaries, primaryRatedDrop: drop1, secondaryRatedDrop: drop2, ratedDensity, lambda }) {
    if (primaries === 0) throw new NoAnswer('matched-set', 'There is no primary injector: nothing feeds the rotors.')
    const share = stageShareOf({
      primaryFlow: stageMassFlow({ flow: rated1, number: primaries, density: ratedDensity }),
      // Both stages work at one rail pressure: the secondaries' rating is brought to that of the primaries.
      secondaryFlow: stageMassFlow({ flow: injectorFlowAt({ ratedFlow: rated2, drop: drop1, ratedDrop: drop2 }), number: secondaries, density: ratedDensity }),
    })
    const worst = setSpreadWorst({ share, primary, secondary })
    const usual = setSpreadSquares({ share, primary, secondary, primaries, secondaries })
    const lean = (spread: number): number => lambdaOfFuelChange({ lambda, change: lessOf({ spread }) })
    return { worst, usual, leanWorst: lean(worst), leanUsual: lean(usual), richWorst: lambdaOfFuelChange({ lambda, change: worst }), primariesAlone: lean(primary) }
  },
  says: () => 'Where {lambda} is meant, the leaner rotor can run at {leanWorst} and the richer at {richWorst}; by chance alone the leaner one is usually near {leanUsual}. A sensor in the common exhaust sees the mean of both and none of this.',
  leavesOut: 'Air that the rotors do not share evenly, pressure differences along the rail, and injectors that drift apart in use.',
})
