import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { churchillFriction } from '@trochoid/compute/fuel/churchillFriction.ts'
import { colebrookFriction } from '@trochoid/compute/fuel/colebrookFriction.ts'
import { ethanolDensityAt } from '@trochoid/compute/fuel/ethanolDensityAt.ts'
import { haalandFriction } from '@trochoid/compute/fuel/haalandFriction.ts'
import { laminarFriction } from '@trochoid/compute/fuel/laminarFriction.ts'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'
import { stepLossCoefficient } from '@trochoid/compute/fuel/stepLossCoefficient.ts'
import { swameeJainFriction } from '@trochoid/compute/fuel/swameeJainFriction.ts'

type Row = { readonly reynolds: number; readonly relativeRoughness: number; readonly churchill: number; readonly colebrook: number; readonly haaland: number; readonly swameeJain: number }
type Line = Parameters<typeof lineLossOf>[0] & { readonly reynolds: number; readonly loss: number }
type Data = { readonly friction: readonly Row[]; readonly laminar: readonly { reynolds: number; laminar: number; churchill: number }[]; readonly lines: readonly Line[]; readonly widening: readonly { diameters: number; coefficient: number }[]; readonly ethanol: readonly { celsius: number; density: number }[] }
const data = JSON.parse(readFileSync(new URL('../../reference/fuel.json', import.meta.url), 'utf8')) as Data

describe('the library gives the same', () => {
  test.each(data.friction)('at Reynolds number $reynolds and roughness $relativeRoughness', (row) => {
    expect(churchillFriction(row) / row.churchill).toBeCloseTo(1, 9)
    expect(colebrookFriction(row) / row.colebrook).toBeCloseTo(1, 9)
    expect(haalandFriction(row) / row.haaland).toBeCloseTo(1, 9)
    expect(swameeJainFriction(row) / row.swameeJain).toBeCloseTo(1, 9)
  })
  test.each(data.laminar)('in laminar flow at $reynolds', (row) => {
    expect(laminarFriction(row)).toBeCloseTo(row.laminar, 12)
    expect(churchillFriction({ ...row, relativeRoughness: 0 }) / row.churchill).toBeCloseTo(1, 9)
  })
  test.each(data.lines)('for a line of $bore m', (row) => {
    expect(lineLossOf(row).reynolds / row.reynolds).toBeCloseTo(1, 9)
    expect(lineLossOf(row).loss / row.loss).toBeCloseTo(1, 9)
  })
  test.each(data.widening)('for a widening of $diameters', (row) => expect(stepLossCoefficient(row)).toBeCloseTo(row.coefficient, 12))
  test.each(data.ethanol)('within 0.02 % for ethanol at $celsius °C', (row) => expect(Math.abs(ethanolDensityAt({ temperature: row.celsius + 273.15 }) / row.density - 1)).toBeLessThan(2e-4))
})

const turbulent = { reynolds: fc.double({ min: 5000, max: 1e7, noNaN: true }), relativeRoughness: fc.double({ min: 1e-6, max: 0.04, noNaN: true }) }
test('the explicit forms stay within 4 % of Colebrook', () => {
  fc.assert(fc.property(turbulent.reynolds, turbulent.relativeRoughness, (reynolds, relativeRoughness) => {
    const exact = colebrookFriction({ reynolds, relativeRoughness })
    for (const explicit of [churchillFriction, haalandFriction, swameeJainFriction]) expect(Math.abs(explicit({ reynolds, relativeRoughness }) / exact - 1)).toBeLessThan(0.04)
  }))
})
test('friction falls with Reynolds number and rises with roughness', () => {
  fc.assert(fc.property(turbulent.reynolds, turbulent.relativeRoughness, (reynolds, relativeRoughness) => {
    const now = colebrookFriction({ reynolds, relativeRoughness })
    expect(colebrookFriction({ reynolds: reynolds * 1.5, relativeRoughness })).toBeLessThan(now)
    expect(colebrookFriction({ reynolds, relativeRoughness: relativeRoughness * 1.5 })).toBeGreaterThan(now)
  }))
})
