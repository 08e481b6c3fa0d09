import { margin } from '../build/margin.ts'
import { sustainedShare } from '../cooling/fields.ts'
import { engineSpeedLimit } from '../engine/fields.ts'
import { coolerAir, coolerRatedHeat, mainDiameter, pumpPerTurn, relief, temperatureLimit } from './fields.ts'
import { at } from './point.ts'

export default [
  margin({
    id: 'shaft-oil-pressure', title: 'Oil pressure into the shaft', theme: 'oil', article: 'flow-and-pressure', over: 'sweep',
    demand: at.shaftPressureAsked, capacity: at.gaugePressure, must: 'stay below', as: 'difference', tight: 1e5, rests: [relief, pumpPerTurn, mainDiameter],
    remedies: [
      { field: relief, move: 'up', says: 'A higher relief setting.' },
      { field: pumpPerTurn, move: 'up', says: 'A larger oil pump.' },
      { field: engineSpeedLimit, move: 'down', says: 'A lower speed limit.' },
    ],
    says: 'At {speed} the turning oil asks {demand} to get into the shaft and the gallery holds {capacity}: {margin}.',
    settle: 'Read a mechanical gauge at the gallery with hot oil, once at speed.',
  }),
  margin({
    id: 'oil-temperature', title: 'Oil temperature', theme: 'oil', article: 'the-oil-cooler', over: 'sweep',
    demand: at.oilTemperature, capacity: temperatureLimit, must: 'stay below', as: 'difference', tight: 8, rests: [coolerRatedHeat, coolerAir, temperatureLimit],
    remedies: [
      { field: coolerAir, move: 'up', says: 'More air through the oil cooler: a duct, a better place.' },
      { field: coolerRatedHeat, move: 'up', says: 'A larger oil cooler, or a second one.' },
      { field: sustainedShare, move: 'down', says: 'Shorter spells at full load.' },
    ],
    says: 'With the load kept up at {speed} the oil settles at {demand}; you accept {capacity}: {margin}.',
    settle: 'Log oil temperature in the gallery over twenty minutes of the hardest use.',
  }),
]
