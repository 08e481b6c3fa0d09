import { expect, test } from 'vitest'
import { sampledExample } from '@trochoid/compute/uncertainty/sampledExample.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

const samples = 100_000
test.each(Object.entries(reference.examples))('%s agrees with two million samples of another library’s generator', (example, [mean, deviation, low, high]) => {
  const got = sampledExample({ example: example as 'mass', samples, seed: 5 })
  const error = deviation! / Math.sqrt(samples)
  expect(Math.abs(got.mean - mean!)).toBeLessThan(4 * error)
  expect(Math.abs(got.uncertainty - deviation!)).toBeLessThan(6 * error)
  // The density near the end of a 95 % interval is seldom below a twentieth of 1/u: the error of the end is then below 3.2 of these.
  for (const [at, of] of [[got.low, low], [got.high, high]] as const) expect(Math.abs(at - of!)).toBeLessThan(4 * 3.2 * error)
})
test('the same seed gives the same draw, another another', () => {
  const at = (seed: number) => sampledExample({ example: 'mass', samples: 100, seed })
  expect(at(3)).toEqual(at(3))
  expect(at(3).mean).not.toBe(at(4).mean)
})
