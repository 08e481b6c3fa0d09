import { expect, test } from 'vitest'
import spark from '@trochoid/compute/spark/spark.margin.ts'

test('the coil is judged at every speed, the charging budget at idle', () => {
  expect(spark.map((m) => [m.id, m.over, m.must])).toEqual([['coil-charge-time', 'sweep', 'stay below'], ['charging-budget-idle', 'idle', 'stay below']])
})
test('each has two or more remedies and a measurement that settles it', () => {
  for (const margin of spark) {
    expect(margin.remedies.length).toBeGreaterThanOrEqual(2)
    expect(margin.settle.length).toBeGreaterThan(30)
  }
})
