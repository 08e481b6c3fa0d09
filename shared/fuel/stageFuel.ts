import { manifoldPressure } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { blendWeight } from './blendWeight.ts'
import { fuelPerCharge, handoverPressure, handoverWidth, stageShare } from './quantities.ts'

/** How the fuel of one charge is parted between primaries and secondaries. What one stage gives up the other takes: the sum never steps. */
export const about = {
  name: 'Fuel of each stage',
  in: {
    fuel: fuelPerCharge, manifold: manifoldPressure, start: handoverPressure, width: handoverWidth, gate: role(handoverPressure, 'p_s', 'Pressure above which the secondaries work now'),
    fullShare: role(stageShare, 'x_2', 'Full share of the secondaries'),
    primaryLeast: role(fuelPerCharge, 'm_1min', 'Least fuel of the primaries'), secondaryLeast: role(fuelPerCharge, 'm_2min', 'Least fuel of the secondaries'),
  },
  out: { primary: role(fuelPerCharge, 'm_1', 'Fuel of the primaries'), secondary: role(fuelPerCharge, 'm_2', 'Fuel of the secondaries'), wanted: role(fuelPerCharge, 'm_w', 'Fuel wanted of the secondaries by the blend') },
  steps: [
    'Below the pressure at which they work, and where there are no secondaries, the primaries give all. That is the start while load rises and less by the hysteresis while it falls.',
    'From the start the wanted share of the secondaries grows in a straight line over the width, up to the share in proportion to flow.',
    'Where that is less than the secondaries can repeat, they give their least, and the primaries step down by the same fuel.',
    'Where that would leave the primaries less than they can repeat, the secondaries wait.',
  ],
  source: ['derived', 'total fuel is kept; neither stage is asked for less than it can repeat'],
} as const satisfies About

export const stageFuel = formula<typeof about>('stage-fuel', {}, ({ fuel, manifold, start, width, gate, fullShare, primaryLeast, secondaryLeast }) => {
  if (fullShare <= 0 || manifold < gate) return { primary: fuel, secondary: 0, wanted: 0 }
  const wanted = fuel * fullShare * blendWeight({ manifold, start, width })
  const secondary = Math.max(wanted, secondaryLeast)
  const primary = fuel - secondary
  return primary < primaryLeast ? { primary: fuel, secondary: 0, wanted } : { primary, secondary, wanted }
})
