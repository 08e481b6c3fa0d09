import { choice, quantity } from '../quantity/quantity.ts'

export const standardUncertainty = quantity('Standard uncertainty', 'u', 'number', [0, 1e6], 0.01)
export const sampleCount = quantity('Samples drawn', 'N', 'number', [1, 1e7], 1, { whole: true })
export const seed = quantity('Seed of the draw', 's', 'number', [1, 2147483645], 1, { whole: true })
export const chance = quantity('Chance in the model', 'P', 'share', [0, 1], 0.01)
export const deviationRatio = quantity('Distance over standard uncertainty', 'z', 'number', [-8, 8], 0.01)
export const sampledMean = quantity('Mean of the samples', 'y', 'number', [-1e6, 1e6], 0.01)
export const intervalEnd = quantity('End of the 95 % interval', 'y_e', 'number', [-1e6, 1e6], 0.01)
export const publishedExample = choice('Published example', {
  'four-normal': 'sum of four, all normal', 'four-rectangular': 'sum of four, all rectangular', 'one-wide': 'sum of four rectangular, one ten times as wide',
  'mass': 'mass against a reference weight', 'loss-0': 'loss of a power meter, at its best estimate 0', 'loss-10': 'loss of a power meter, at 0.010', 'loss-50': 'loss of a power meter, at 0.050',
})
