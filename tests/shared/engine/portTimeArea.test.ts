import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apexPathPerTurn } from '@trochoid/compute/engine/apexPathPerTurn.ts'
import { closingApex } from '@trochoid/compute/engine/closingApex.ts'
import { distanceSlid } from '@trochoid/compute/engine/distanceSlid.ts'
import { openingApex } from '@trochoid/compute/engine/openingApex.ts'
import { portAreaAt } from '@trochoid/compute/engine/portAreaAt.ts'
import { portGasSpeed } from '@trochoid/compute/engine/portGasSpeed.ts'
import { portRamp } from '@trochoid/compute/engine/portRamp.ts'
import { portTimeArea } from '@trochoid/compute/engine/portTimeArea.ts'
import { portWholeArea } from '@trochoid/compute/engine/portWholeArea.ts'
import { rotorCouple } from '@trochoid/compute/engine/rotorCouple.ts'
import { sealPathOverRoad } from '@trochoid/compute/engine/sealPathOverRoad.ts'
import { weightsOf } from '@trochoid/compute/engine/weightsOf.ts'
import { rotorLoad } from '@trochoid/compute/engine/rotorLoad.ts'

const deg = Math.PI / 180
const port = fc.record({
  whole: fc.double({ min: 2e-4, max: 40e-4, noNaN: true }), open: fc.double({ min: -100 * deg, max: 60 * deg, noNaN: true }), lasts: fc.double({ min: 30 * deg, max: 500 * deg, noNaN: true }),
  opening: fc.double({ min: 5 * deg, max: 200 * deg, noNaN: true }), closing: fc.double({ min: 5 * deg, max: 200 * deg, noNaN: true }),
})

test('time-area is the area added up over the time, whether the port gets fully open or not', () => {
  fc.assert(fc.property(port, ({ whole, open, lasts, opening, closing }) => {
    const close = open + lasts
    const speed = 500
    const n = 6000
    let sum = 0
    for (let i = 0; i < n; i++) sum += portAreaAt({ whole, angle: open + (lasts * (i + 0.5)) / n, open, close, opening, closing })
    expect(portTimeArea({ whole, open, close, opening, closing, speed }) / ((sum * lasts) / n / speed)).toBeCloseTo(1, 5)
  }), { numRuns: 40 })
})
test('a port is shut before it opens and after it has closed, and never more than whole', () => {
  fc.assert(fc.property(port, fc.double({ min: -3, max: 12, noNaN: true }), ({ whole, open, lasts, opening, closing }, angle) => {
    const close = open + lasts
    const area = portAreaAt({ whole, angle, open, close, opening, closing })
    if (angle <= open || angle >= close) expect(area).toBe(0)
    expect(area).toBeLessThanOrEqual(whole)
    expect(area).toBeGreaterThanOrEqual(0)
  }))
})
test('twice the speed is half the time-area and twice the gas speed', () => {
  const at = (speed: number) => portTimeArea({ whole: 15e-4, open: 0.5, close: 5.5, opening: 0.8, closing: 0.6, speed })
  expect(at(800) / at(400)).toBeCloseTo(0.5, 12)
  expect(portGasSpeed({ displacement: 654e-6, timeArea: at(800) }) / portGasSpeed({ displacement: 654e-6, timeArea: at(400) })).toBeCloseTo(2, 12)
})
test('a port that the leading apex opens is closed by the trailing one a turn later, at the same place', () => {
  expect(closingApex({ close: 0.4 + 2 * Math.PI })).toBeCloseTo(openingApex({ open: 0.4 }), 12)
})
test('the ramps of ports all the way round add up to the way round', () => {
  // Small heights, each begun where the one before ended: their angles make one round of the rotor, three turns of the shaft.
  const size = { generatingRadius: 0.105, eccentricity: 0.015, shift: 0.003 }
  const n = 2000
  const height = (3 * apexPathPerTurn(size)) / n
  let angle = 0
  for (let i = 0; i < n; i++) angle += portRamp({ ...size, height, rotorAngle: angle / 3 })
  expect(angle / (6 * Math.PI)).toBeCloseTo(1, 3)
  expect(portWholeArea({ width: 0.03, height: 0.04 })).toBeCloseTo(12e-4, 12)
})
test('a seal slides farther in a lower gear and on a smaller tyre', () => {
  const over = (ratio: number, radius: number) => sealPathOverRoad({ perTurn: 0.236, ratio, finalDrive: 4.1, radius })
  expect(over(2, 0.31) / over(1, 0.31)).toBeCloseTo(2, 12)
  expect(over(1, 0.28)).toBeGreaterThan(over(1, 0.31))
  expect(distanceSlid({ driven: 1000, over: over(1, 0.31) })).toBeCloseTo(1000 * over(1, 0.31), 9)
})
test('a load in weights does not ask for the mass, and a couple grows with the spacing', () => {
  const weights = (mass: number) => weightsOf({ load: rotorLoad({ mass, eccentricity: 0.015, speed: 800 }), mass })
  expect(weights(3)).toBeCloseTo(weights(6), 9)
  expect(rotorCouple({ load: 1000, spacing: 0.2 })).toBe(200)
})
