import { expect, test } from 'vitest'
import { shareInterval } from '@trochoid/compute/uncertainty/shareInterval.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

test.each(reference.intervals)('%d of %d has SciPy’s score interval', (counted, of, low, high) => {
  const got = shareInterval({ share: counted! / of!, samples: of! })
  expect(got.low).toBeCloseTo(low!, 9)
  expect(got.high).toBeCloseTo(high!, 9)
})
test('four times the samples halve it', () => {
  const width = (samples: number): number => { const { low, high } = shareInterval({ share: 0.4, samples }); return high - low }
  expect(width(40000) / width(10000)).toBeCloseTo(0.5, 3)
})
