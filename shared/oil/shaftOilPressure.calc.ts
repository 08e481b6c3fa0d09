import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { density15, mainDiameter } from './fields.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { at } from './point.ts'
import { oilDensity } from './quantities.ts'
import { shaftPressure } from './shaftPressure.ts'

export default calculation({
  id: 'shaft-oil-pressure', title: 'Pressure the shaft asks', theme: 'oil',
  asks: 'How much pressure does oil need to get into the turning shaft?',
  article: 'flow-and-pressure', cautions: ['rotating-burst', 'hot-oil', 'model-only'],
  in: { speed: engine.speed, diameter: mainDiameter, density15, temperature: at.oilTemperature },
  out: { pressure: at.shaftPressureAsked, density: oilDensity },
  curve: ['speed', 'pressure'],
  answer({ speed, diameter, density15, temperature }) {
    const density = oilDensityAt({ density15, temperature })
    return { pressure: shaftPressure({ density, speed, diameter }), density }
  },
  says: () => 'At {speed} the turning oil pushes back with {pressure}: less than that on the gauge and none reaches the rotor bearings.',
  leavesOut: 'Losses in the holes, and air in the oil.',
})
