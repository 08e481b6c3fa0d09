import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as fuel } from '../fuel/point.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineRotors, engineShift, engineWidth } from './fields.ts'
import { meanEffectivePressure } from './meanEffectivePressure.ts'
import { at } from './point.ts'
import { specificFuelConsumption } from './specificFuelConsumption.ts'

export default calculation({
  id: 'mean-pressure-and-consumption', title: 'Mean pressure and specific consumption', theme: 'engine', article: 'what-displacement-means-here', cautions: ['model-only'],
  asks: 'What mean pressure does this power mean, and how much fuel does each unit of work take?',
  in: {
    power: at.power, speed: at.speed, fuelFlow: fuel.fuelMassFlow, rotors: engineRotors, describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius,
    eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, stated: engineDisplacement,
  },
  out: { meanPressure: at.meanPressure, consumption: at.specificConsumption },
  curve: ['power', 'consumption'],
  answer({ power, speed, fuelFlow, rotors, ...description }) {
    if (!(power > 0)) throw new NoAnswer('mean-pressure-and-consumption', 'No power leaves the shaft here, so there is no consumption for each unit of work.')
    return { meanPressure: meanEffectivePressure({ power, displacement: describedDisplacement(description), rotors, speed }), consumption: specificFuelConsumption({ fuelFlow, power }) }
  },
  says: () => '{power} at {speed} is a mean pressure of {meanPressure} on one chamber per rotor and shaft turn, for {consumption}. Boosted rotary engines at full load usually lie between 330 and 400 g/kWh: common practice, no source.',
  leavesOut: 'What the driveline takes before the wheels.',
})
