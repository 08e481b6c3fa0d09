import { type Check, type Confidence } from '../check.ts'

const gum = 'JCGM 100:2008, Guide to the expression of uncertainty in measurement'
const supplement = 'JCGM 101:2008, Supplement 1 to that guide'
const newcombe = 'R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, score method without continuity correction'
const samples = 200_000

/**
 * A result of sampling agrees within the source's rounding and three standard errors of our own samples: 3 u / √N for a mean, 3 u √(k - 1) / (2 √N)
 * for a standard deviation of kurtosis k, and 3 √(0.025 · 0.975 / N) over the density there for the end of an interval.
 */
const sampled = (example: string, clause: string, out: Check['out'], confidence: Confidence): Check => ({
  id: `sampled-${example}`, of: 'sampled-example', in: { example, samples, seed: 1 }, out,
  source: `${supplement}, ${clause}. Precision: the source’s rounding and three standard errors of ${samples.toLocaleString('en').replace(',', ' ')} samples`, confidence,
})
const value = (value: number, tolerance: number) => ({ value, unit: '1', tolerance })

/** Uncertainty put together to first order and by sampling, and the sampling error of a counted share. */
export const checks: readonly Check[] = [
  {
    id: 'end-gauge', of: 'combined-uncertainty', in: { a: 25, b: 9.7, c: 2.9, d: 16.6 }, out: { out: value(32, 0.5) },
    source: `${gum}, H.1.4: parts of 25, 9.7, 2.9 and 16.6 nm make 32 nm`, confidence: 'confirmed by search',
  },
  {
    id: 'end-gauge-difference', of: 'combined-uncertainty', in: { a: 5.8, b: 3.9, c: 6.7, d: 0 }, out: { out: value(9.7, 0.05) },
    source: `${gum}, H.1.3.2: repeatability 5.8, random 3.9 and systematic effects of the comparator 6.7 nm make 9.7 nm`, confidence: 'confirmed by search',
  },
  {
    id: 'four-inputs-first-order', of: 'combined-uncertainty', in: { a: 1, b: 1, c: 1, d: 10 }, out: { out: value(10.1, 0.05) },
    source: `${supplement}, 9.2.4, table 4: first order 10.1, with an interval of ±19.9 where sampling gives ±17.0`, confidence: 'from memory',
  },
  {
    id: 'mass-first-order', of: 'combined-uncertainty', in: { a: 0.05, b: 0.02, c: 0, d: 0 }, out: { out: value(0.0539, 0.00005) },
    source: `${supplement}, 9.3, table 6: first order 0.0539 mg, since every sensitivity to a density is nothing at the best estimates; sampling gives 0.0754 mg`, confidence: 'from memory',
  },
  sampled('four-normal', '9.2.2, table 2', { mean: value(0, 0.013), uncertainty: value(2, 0.05 + 0.009), low: value(-3.92, 0.041), high: value(3.92, 0.041) }, 'confirmed by search'),
  sampled('four-rectangular', '9.2.3, table 3', { mean: value(0, 0.013), uncertainty: value(2, 0.05 + 0.008), low: value(-3.88, 0.041), high: value(3.88, 0.041) }, 'confirmed by search'),
  sampled('one-wide', '9.2.4, table 4', { mean: value(0, 0.068), uncertainty: value(10.2, 0.05 + 0.032), low: value(-17, 0.05 + 0.042), high: value(17, 0.05 + 0.042) }, 'from memory'),
  sampled('mass', '9.3, table 6', { mean: value(1.2341, 0.0006), uncertainty: value(0.0754, 0.0005) }, 'from memory'),
  sampled('loss-0', '9.4.2.2: best estimate 0, first order gives an uncertainty of 0', { mean: value(50, 0.84), uncertainty: value(50, 1) }, 'from memory'),
  sampled('loss-10', '9.4.2.3: best estimate 0.010, first order gives 100 ± 100', { mean: value(150, 1.3), uncertainty: value(112, 1.5) }, 'from memory'),
  sampled('loss-50', '9.4.2.4: best estimate 0.050, first order gives 2 500 ± 500', { mean: value(2551, 8.4), uncertainty: value(502, 3) }, 'from memory'),
  ...([[81, 263, 0.2553, 0.3662], [15, 148, 0.0624, 0.1605], [0, 20, 0, 0.1611], [1, 29, 0.0061, 0.1718]] as const).map(([counted, of, low, high]): Check => ({
    id: `share-${counted}-of-${of}`, of: 'share-interval', in: { share: counted / of, samples: of },
    out: { low: { value: low * 100, unit: '%', tolerance: 0.005 }, high: { value: high * 100, unit: '%', tolerance: 0.005 } },
    source: `${newcombe}: ${counted} of ${of}`, confidence: 'from memory',
  })),
  ...([[0, 0.5], [1, 0.8413447], [1.959964, 0.975], [-1.644854, 0.05], [3, 0.9986501]] as const).map(([z, share]): Check => ({
    id: `normal-share-${z}`, of: 'normal-share', in: { z }, out: { out: { value: share * 100, unit: '%', tolerance: 0.00002 } },
    source: 'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), tables 26.1 and 26.5', confidence: 'from memory',
  })),
]
