import { blendDensity } from '@trochoid/compute/fuel/blendDensity.ts'
import { blendHeatingValue } from '@trochoid/compute/fuel/blendHeatingValue.ts'
import { blendStoichiometry } from '@trochoid/compute/fuel/blendStoichiometry.ts'
import { petrolDensity, petrolHeatingValue, petrolHydrogen } from '@trochoid/compute/fuel/fields.ts'
import { figure, type ReferenceTable } from './table.ts'

const density15 = petrolDensity.start as number
const hydrogen = petrolHydrogen.start as number
const petrolHeat = petrolHeatingValue.start as number
const shares = [0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.85, 1]

const rows = shares.map((ethanolShare) => {
  const density = blendDensity({ ethanolShare, petrolDensity: density15, temperature: 288.15 })
  const ratio = blendStoichiometry({ ethanolShare, petrolDensity: density15, petrolHydrogen: hydrogen })
  const heat = blendHeatingValue({ ethanolShare, petrolDensity: density15, petrolHeat })
  return { ethanolShare, density, ratio, heat, volume: 1 / (ratio * density) }
})

export const fuels: ReferenceTable = {
  id: 'fuels', title: 'Fuels', also: 'petrol gasoline ethanol E10 E85 stoichiometric ratio heating value density',
  says: 'What a share of ethanol does to density, to the air it asks, to its heat, and to the volume an injector has to pass.',
  parts: [{
    id: 'ethanol', title: 'Petrol with ethanol, at 15 °C',
    head: ['Ethanol by volume, %', 'Density, kg/m³', 'Stoichiometric air, kg/kg', 'Lower heating value, MJ/kg', 'Heat for each kg of air, MJ', 'Fuel volume for the same air, petrol = 1'],
    rows: rows.map(({ ethanolShare, density, ratio, heat, volume }) => [figure(ethanolShare * 100), figure(density, 1), figure(ratio, 2), figure(heat / 1e6, 2), figure(heat / ratio / 1e6, 2), figure(volume / rows[0]!.volume, 2)]),
  }],
  notes: [
    `Petrol is no one substance. The table takes one of ${figure(density15)} kg/m³, ${figure(hydrogen, 2)} atoms of hydrogen for each of carbon, and ${figure(petrolHeat / 1e6, 1)} MJ/kg. A fuel from the pump may differ by some hundredths; the calculator takes the numbers of yours.`,
    'What the pump calls a blend is a limit, not a content. Measure the ethanol share of what is in the tank.',
    'Nothing here tells how a fuel resists knock.',
  ],
  sources: ['api-mpms-11-1', 'ethanol-density-dippr', 'afdc-fuels', 'iupac-weights'], cautions: ['fuel-vapour', 'fuel-additives-skin', 'emission-law', 'knock'], calculators: ['fuel-blend', 'injector-flow-at-pressure'],
}
