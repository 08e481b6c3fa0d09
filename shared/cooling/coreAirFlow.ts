import { formula, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { root, untraced } from '../formula/trace.ts'
import { airDensity } from '../media/quantities.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { dropAtFlow } from './dropAtFlow.ts'
import { fanPressure } from './fanPressure.ts'
import { coreAir, coreDropOf, coreExponentOf, fanFlow, fanPressureOf, ramPressureOf } from './quantities.ts'

/** Air that passes the core: where what ram and fan bring meets what the stack loses. */
export const about = {
  name: 'Air flow through the core',
  in: {
    ram: ramPressureOf, shutOff: role(fanPressureOf, 'Δp_f0', 'Fan against a closed core'), freeFlow: role(fanFlow, 'V_f0', 'Free flow of the fan'),
    rated: role(coreDropOf, 'Δp_k0', 'Pressure lost in the stack at the rated flow'), ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), exponent: coreExponentOf,
    density: airDensity, ratedDensity: role(airDensity, 'ρ_0', 'Density at the rating'),
  },
  out: coreAir,
  holds: 'ram + shutOff * max(0, 1 - (out / density / freeFlow)^2) = rated * (out / ratedAir)^exponent * ratedDensity / density',
  source: ['derived', 'pressures around the path of the air add to nothing'],
  notes: 'Air that heats up in the core thickens its resistance a little; that is left out.',
  sample: { ram: [10, 3000], shutOff: [10, 1000], freeFlow: [0.1, 3], ratedAir: [0.3, 6] },
} as const satisfies About

export const coreAirFlow = formula<typeof about>('core-air-flow', {}, ({ ram, shutOff, freeFlow, rated, ratedAir, exponent, density, ratedDensity }) => {
  const most = ram + (freeFlow > 0 ? shutOff : 0)
  if (!(most > 0)) throw new NoAnswer('core air', 'Neither ram air nor a fan moves air through the core.')
  const spare = (air: number): number => ram + fanPressure({ flow: air / density, shutOff, freeFlow }) - dropAtFlow({ rated, air, ratedAir, exponent, density, ratedDensity })
  // With the fan at its full pressure throughout, the flow can be written down: the root lies below it.
  const high = ratedAir * ((most * density) / (rated * ratedDensity)) ** (1 / exponent)
  const found = untraced(() => bracketedRoot(spare, 0, high * 1.000001, high * 1e-13))
  fanPressure({ flow: found.x / density, shutOff, freeFlow })
  dropAtFlow({ rated, air: found.x, ratedAir, exponent, density, ratedDensity })
  return root('air flow', found.x, found.residual)
})
