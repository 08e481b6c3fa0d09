import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { intervalEnd, publishedExample, sampleCount, sampledMean, seed, standardUncertainty } from './quantities.ts'
import { draw, normal95, type Spread } from './spread.ts'
import { interval95, meanAndDeviation } from './statistics.ts'
import { uniform } from './uniform.ts'

/** Examples of the guide to sampling, through the very draws and sums by which the chance of a margin is found. */
export const about = {
  name: 'A published example of sampling',
  in: { example: publishedExample, samples: sampleCount, seed },
  out: { mean: sampledMean, uncertainty: role(standardUncertainty, 'u_y', 'Standard deviation of the samples'), low: role(intervalEnd, 'y_l', 'Lower end of the 95 % interval'), high: role(intervalEnd, 'y_h', 'Upper end of the 95 % interval') },
  steps: [
    'Draw every input from its spread about its best estimate, as for a build.',
    'Work out the result of each draw: a sum of four inputs, a mass in air against a reference weight (milligrams above 100 g), or the loss of a power meter (millionths).',
    'Give mean and standard deviation of the results, and the interval that leaves out as many of them below as above.',
  ],
  source: ['jcgm-101', 'clause 9'],
} as const satisfies About

type Input = readonly [best: number, spread: Spread]
type Example = { readonly inputs: readonly Input[]; readonly result: (x: readonly number[]) => number }

const normal = (best: number, u: number): Input => [best, { form: 'normal', half: u * normal95 }]
const between = (low: number, high: number): Input => [(low + high) / 2, { form: 'rectangular', half: (high - low) / 2 }]
const even = (u: number): Input => between(-u * Math.sqrt(3), u * Math.sqrt(3))
const sum = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0)
const loss = (best: number): Example => ({ inputs: [normal(best, 0.005), normal(0, 0.005)], result: ([a, b]) => (a! ** 2 + b! ** 2) * 1e6 })

const examples: Readonly<Record<keyof typeof publishedExample.choices, Example>> = {
  'four-normal': { inputs: [normal(0, 1), normal(0, 1), normal(0, 1), normal(0, 1)], result: sum },
  'four-rectangular': { inputs: [even(1), even(1), even(1), even(1)], result: sum },
  'one-wide': { inputs: [even(1), even(1), even(1), even(10)], result: sum },
  // Reference weight and the small one beside it, mg; densities of air, weight and reference weight, kg/m³.
  'mass': {
    inputs: [normal(100000, 0.05), normal(1.234, 0.02), between(1.1, 1.3), between(7000, 9000), between(7950, 8050)],
    result: ([reference, small, air, weight, of]) => (reference! + small!) * (1 + (air! - 1.2) * (1 / weight! - 1 / of!)) - 100000,
  },
  'loss-0': loss(0), 'loss-10': loss(0.01), 'loss-50': loss(0.05),
}

export const sampledExample = formula<typeof about>('sampled-example', {}, ({ example, samples, seed }) => {
  const { inputs, result } = examples[example]
  const next = uniform(seed)
  const results = Float64Array.from({ length: samples }, () => result(inputs.map(([best, spread]) => best + draw(spread, next(), next()))))
  const { mean, deviation } = meanAndDeviation(results)
  const [low, high] = interval95(results)
  return { mean, uncertainty: deviation, low, high }
})
