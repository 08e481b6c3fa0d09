import { formula, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { fuelTemperature, reidPressure, vapourPressure } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { trueVapourPressure } from './trueVapourPressure.ts'

/** Temperature at which petrol boils under a pressure: the vapour pressure, solved backwards. */
export const about = {
  name: 'Boiling temperature of the fuel',
  in: { reid: reidPressure, pressure: role(vapourPressure, 'p', 'Pressure on the fuel') },
  out: fuelTemperature,
  steps: ['Guess a temperature; the vapour pressure there must be the pressure on the fuel.', 'It rises with temperature without turning, so there is one answer.'],
  source: ['epa-ap42-7-1', 'figure 7.1-14b, solved for temperature'],
  notes: 'Beyond 60 °C the source’s equation is an extrapolation.',
} as const satisfies About

const coldest = 230, hottest = 600

export const boilingTemperatureOfFuel = formula<typeof about>('boiling-temperature-of-fuel', {}, ({ reid, pressure }) => {
  const spare = (temperature: number): number => Math.log(trueVapourPressure({ reid, temperature }) / pressure)
  const found = untraced(() => {
    const low = spare(coldest), high = spare(hottest)
    if (!(low < 0 && high > 0)) throw new NoAnswer('vapour', 'Under this pressure the fuel boils at no temperature that the equation covers.')
    return bracketedRoot(spare, coldest, hottest, 1e-7, low, high)
  })
  trueVapourPressure({ reid, temperature: found.x })
  return root('boiling temperature', found.x, found.residual)
})
