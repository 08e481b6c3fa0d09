import { calculation } from '../calculation/calculation.ts'
import { density15 } from './fields.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { at } from './point.ts'
import { oilDensity, volumeGrowth } from './quantities.ts'
import { volumeGrowthOf } from './volumeGrowthOf.ts'

export default calculation({
  id: 'oil-density', title: 'Oil density over temperature', theme: 'oil',
  asks: 'How dense is the oil at this temperature, and how much does it grow?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'model-only'],
  in: { density15, temperature: at.oilTemperature },
  out: { density: oilDensity, growth: volumeGrowth },
  curve: ['temperature', 'density'],
  answer({ density15, temperature }) {
    const density = oilDensityAt({ density15, temperature })
    return { density, growth: volumeGrowthOf({ density15, density }) }
  },
  says: () => 'At {temperature} the oil has {density}: it takes {growth} more room than at 15 °C. Fill to the mark hot or cold as the mark was made.',
  leavesOut: 'Air in the oil, which makes it lighter still.',
})
