import { expect, test } from 'vitest'
import { inducerChoke } from '@trochoid/compute/boost/inducerChoke.ts'
import { tipMachOf } from '@trochoid/compute/boost/tipMachOf.ts'
import { tipSpeedOf } from '@trochoid/compute/boost/tipSpeedOf.ts'
import { wheelFlows } from '@trochoid/compute/boost/wheelFlows.ts'
import { wheelPlace } from '@trochoid/compute/boost/wheelPlace.ts'
import { wheelTrim } from '@trochoid/compute/boost/wheelTrim.ts'

const R = Math.PI / 30
const wheel = { inducer: 0.058, exducer: 0.077, throat: 0.53, temperature: 298.15, pressure: 1e5 }

test('the right edge grows with speed, near the choke of its inducer when fast and with speed when slow', () => {
  let before = 0
  for (const n of [20e3, 40e3, 60e3, 80e3, 100e3, 120e3]) {
    const { surge, right } = wheelFlows({ ...wheel, speed: n * R })
    expect(right).toBeGreaterThan(before)
    expect(surge).toBeLessThan(0.66 * right)
    expect(right).toBeLessThanOrEqual(inducerChoke({ ...wheel, speed: n * R }))
    before = right
  }
  const at = (n: number) => wheelFlows({ ...wheel, speed: n * R }).right
  expect(at(20e3) / at(10e3)).toBeCloseTo(2, 2)
  expect(at(130e3) / inducerChoke({ ...wheel, speed: 130e3 * R })).toBeGreaterThan(0.93)
})
test('flow goes with the square of size at the same tip speed, and with pressure', () => {
  const twice = wheelFlows({ ...wheel, inducer: 0.116, exducer: 0.154, speed: 50e3 * R })
  const once = wheelFlows({ ...wheel, speed: 100e3 * R })
  expect(twice.right / once.right).toBeCloseTo(4, 9)
  expect(twice.surge / once.surge).toBeCloseTo(4, 9)
  expect(wheelFlows({ ...wheel, pressure: 8e4, speed: 100e3 * R }).right / once.right).toBeCloseTo(0.8, 12)
})
test('published wheels pass their design flow between the estimated ends', () => {
  // Inducer, exducer in metres, rpm, kg/s: NASA CC3, Radiver, SRV2 as in the checks; from memory.
  for (const [inducer, exducer, n, flow] of [[0.21, 0.431, 21789, 4.54], [0.1545, 0.27, 35200, 2.5], [0.156, 0.224, 50000, 2.55]] as const) {
    const { surge, right } = wheelFlows({ inducer, exducer, throat: 0.53, temperature: 288.15, pressure: 101325, speed: n * R })
    const place = wheelPlace({ flow, surge, right })
    expect(place).toBeGreaterThan(0)
    expect(place).toBeLessThan(1)
  }
})
test('trim, tip speed and Mach number are those of the drawing', () => {
  expect(wheelTrim({ inducer: 0.05, exducer: 0.05 * Math.sqrt(2) })).toBeCloseTo(50, 9)
  expect(tipSpeedOf({ speed: 10e3, diameter: 0.08 })).toBe(400)
  expect(tipMachOf({ tipSpeed: 340.294, temperature: 288.15 })).toBeCloseTo(1, 5)
})
