import { expect, test } from 'vitest'
import { currentReached } from '@trochoid/compute/spark/currentReached.ts'
import { energyKept } from '@trochoid/compute/spark/energyKept.ts'
import coilAtSpeed from '@trochoid/compute/spark/coilAtSpeed.calc.ts'
import coilCharge from '@trochoid/compute/spark/coilCharge.calc.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'

const at = (more: object) => coilAtSpeed.answer({ ...startValues(coilAtSpeed), ...more } as never)

test('a coil never carries more than was wanted, and energy goes with the square of current', () => {
  expect(currentReached({ wanted: 7, allowed: 9 })).toBe(7)
  expect(energyKept({ energy: 0.05, wanted: 0.1 })).toBe(0.5)
})
test('more speed and less voltage leave it less, and a coil of its own for each plug more than a shared one', () => {
  const speed = 1000
  expect(at({ speed, voltage: 11, layout: 'shared' }).reached).toBeLessThan(at({ speed, voltage: 14, layout: 'shared' }).reached)
  expect(at({ speed: 1100, voltage: 11, layout: 'shared' }).reached).toBeLessThan(at({ speed: 800, voltage: 11, layout: 'shared' }).reached)
  expect(at({ speed, voltage: 11, layout: 'own' }).reached).toBeGreaterThan(at({ speed, voltage: 11, layout: 'shared' }).reached)
})
test('it falls short just where the charge time exceeds its window', () => {
  for (const speed of [200, 500, 800, 1100]) for (const voltage of [9, 11, 13.8]) {
    const given = { ...startValues(coilCharge), speed, voltage, layout: 'shared' }
    let enough = false
    try { const { time, window } = coilCharge.answer(given as never); enough = time <= window } catch { enough = false }
    expect(at({ speed, voltage, layout: 'shared' }).share === 1, `${speed} ${voltage}`).toBe(enough)
  }
})
