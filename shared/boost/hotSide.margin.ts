import { margin } from '../build/margin.ts'
import { at as cooling } from '../cooling/point.ts'
import { engineLambdaCurve } from '../engine/fields.ts'
import { at } from './point.ts'
import { boostTargetCurve, hotMaterialOf, hotSideLimit } from './fields.ts'

export default margin({
  id: 'exhaust-temperature', title: 'Exhaust temperature against the hot side', theme: 'turbo', article: 'hot-side-materials-and-heat', over: 'sweep',
  demand: cooling.exhaustTemperature, capacity: at.hotSideTemperature, must: 'stay below', as: 'difference', tight: 25, band: [cooling.exhaustTemperatureLow, cooling.exhaustTemperatureHigh], rests: [hotMaterialOf],
  remedies: [
    { field: engineLambdaCurve, move: 'down', says: 'A richer mixture, which costs fuel.' },
    { field: hotSideLimit, move: 'up', says: 'A hot side that its maker states for more.' },
    { field: boostTargetCurve, move: 'down', says: 'Less boost.' },
  ],
  says: 'At {speed} the gas comes at {demand} to a hot side meant for {capacity}: {margin}. The band is that of the heat balance; the metal runs cooler than the gas.',
  settle: 'One logged exhaust temperature at full power, from a thermocouple close to the turbine.',
})
