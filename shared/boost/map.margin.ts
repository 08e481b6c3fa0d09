import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { boostTargetCurve, compressorMapOf, coolerLoss, inletLoss, turbineCapacity } from './fields.ts'

export default [
  margin({
    id: 'surge', title: 'Surge', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
    demand: at.correctedFlow, capacity: at.surgeFlow, must: 'stay above', as: 'share', tight: 0.1, rests: [compressorMapOf],
    remedies: [
      { field: boostTargetCurve, move: 'down', says: 'Less boost: at a lower pressure ratio the surge line lies farther left.' },
      { field: turbineCapacity, move: 'up', says: 'A larger turbine: boost comes later, when the engine already takes more air.' },
      { field: inletLoss, move: 'down', says: 'A freer filter and duct: the same boost at a lower pressure ratio.' },
    ],
    says: 'At {speed} the compressor passes {demand} where it would surge at {capacity}: {margin}. Pulses and a bend before the wheel eat some of that.',
    settle: 'Log manifold pressure at full throttle through the rise of boost: surge shows as a saw-tooth of a few hertz.',
  }),
  margin({
    id: 'choke', title: 'Choke', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
    demand: at.correctedFlow, capacity: at.chokeFlow, must: 'stay below', as: 'share', tight: 0.05, rests: [compressorMapOf],
    remedies: [
      { field: inletLoss, move: 'down', says: 'A freer filter and duct: thinner air before the wheel counts as more flow on the map.' },
      { field: boostTargetCurve, move: 'down', says: 'Less boost, less air.' },
      { field: coolerLoss, move: 'down', says: 'A charge cooler that costs less pressure.' },
    ],
    says: 'At {speed} the compressor passes {demand}; the right edge of its map lies at {capacity}: {margin}.',
    settle: 'Log compressor outlet temperature at full power: near choke it climbs much faster than boost.',
  }),
  margin({
    id: 'compressor-overspeed', title: 'Turbocharger speed', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
    demand: at.compressorSpeed, capacity: at.speedLimit, must: 'stay below', as: 'share', tight: 0.05, rests: [compressorMapOf],
    remedies: [
      { field: boostTargetCurve, move: 'down', says: 'Less boost at the top.' },
      { field: inletLoss, move: 'down', says: 'A freer filter and duct: the same boost at a lower pressure ratio.' },
      { field: coolerLoss, move: 'down', says: 'A charge cooler that costs less pressure.' },
    ],
    says: 'At {speed} the turbocharger turns at {demand}; the limit, its maker’s or else the top line of the map, is {capacity}: {margin}. A burst wheel is not held by every housing.',
    settle: 'Fit a speed sensor in the compressor housing and ask the maker for the limit.',
  }),
]
