import { heatFlow } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelDensity, fuelSpecificHeat, fuelTemperature, sessionTime, tankConductance, tankVolume } from './quantities.ts'

/** Temperature of the fuel in a tank some time after heat began to return to it. */
export const about = {
  name: 'Fuel temperature in the tank',
  in: {
    start: role(fuelTemperature, 'T_0', 'Fuel temperature at the start'), around: role(fuelTemperature, 'T_a', 'Air under the tank'), heat: heatFlow, surface: tankConductance,
    volume: tankVolume, density: fuelDensity, specificHeat: fuelSpecificHeat, time: sessionTime,
  },
  out: role(fuelTemperature, 'T_t', 'Fuel temperature then'),
  equation: 'around + heat / surface + (start - around - heat / surface) * exp(-surface * time / (volume * density * specificHeat))',
  sample: { volume: [0.005, 0.1], surface: [1, 60] },
  source: ['derived', 'a mixed tank with steady heat in and loss to the air, solved over time'],
  notes: 'The volume is taken as the mean over the time: as the tank empties, less fuel takes the same heat.',
} as const satisfies About

export const tankTemperature = formula<typeof about>('tank-temperature', {}, ({ start, around, heat, surface, volume, density, specificHeat, time }) => {
  const settled = around + heat / surface
  return settled + (start - settled) * Math.exp((-surface * time) / (volume * density * specificHeat))
})
