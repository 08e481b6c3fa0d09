import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/oil.json' with { type: 'json' }
import { endless, square } from '@trochoid/compute/data/oilsBearings.ts'
import { flowColumn, frictionColumn, readColumn, ready, sideColumn } from '@trochoid/compute/oil/bearingTable.ts'
import { raimondiBoyd } from '@trochoid/compute/oil/raimondiBoyd.ts'
import { shortBearingEccentricity } from '@trochoid/compute/oil/shortBearingEccentricity.ts'
import { shortBearingLoad } from '@trochoid/compute/oil/shortBearingLoad.ts'
import { slendernessWeights } from '@trochoid/compute/oil/slendernessWeights.ts'

const numbers = fc.double({ min: 0.006, max: 10, noNaN: true })
const shapes = fc.constantFrom(0.25, 0.5, 0.75, 1, 1.5)

describe('inside the tables', () => {
  test('agrees with an independent solution of Reynolds’ equation, other shapes too', () => {
    for (const { slenderness, eccentricity, sommerfeld, attitude } of reference.bearing) {
      const found = raimondiBoyd({ sommerfeld, slenderness })
      expect(Math.abs(found.film - (1 - eccentricity)), `${slenderness} ${eccentricity}`).toBeLessThan(0.045)
      expect(Math.abs(found.attitude - attitude), `${slenderness} ${eccentricity}`).toBeLessThan(0.12)
    }
  })
  test('a higher Sommerfeld number floats higher, rubs more dimensionlessly and leaks a smaller share', () => {
    fc.assert(fc.property(numbers, shapes, (sommerfeld, slenderness) => {
      const a = raimondiBoyd({ sommerfeld, slenderness }), b = raimondiBoyd({ sommerfeld: sommerfeld * 1.1, slenderness })
      expect(b.film).toBeGreaterThan(a.film)
      expect(b.friction).toBeGreaterThan(a.friction)
      expect(b.side).toBeLessThanOrEqual(a.side)
    }))
  })
  test('a longer bearing holds more film at the same number', () => {
    for (const sommerfeld of [0.02, 0.1, 0.5]) {
      const films = [0.25, 0.5, 1, 100].map((slenderness) => raimondiBoyd({ sommerfeld, slenderness }).film)
      for (let i = 1; i < films.length; i++) expect(films[i]!).toBeGreaterThan(films[i - 1]!)
    }
  })
  test('shares stay shares', () => {
    fc.assert(fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), fc.double({ min: 0.1, max: 8, noNaN: true }), (sommerfeld, slenderness) => {
      const { film, side, pressure } = raimondiBoyd({ sommerfeld, slenderness })
      for (const x of [film, side, pressure]) { expect(x).toBeGreaterThanOrEqual(0); expect(x).toBeLessThanOrEqual(1) }
    }))
  })
  test('an endless bearing leaks nothing sideways', () => expect(raimondiBoyd({ sommerfeld: 0.1, slenderness: 1000 }).side).toBeLessThan(0.005))
})

describe('beyond the tables', () => {
  test('far above, the journal runs centred: friction is Petroff’s and the flow half the gap times the speed', () => {
    const far = raimondiBoyd({ sommerfeld: 1000, slenderness: 1 })
    expect(far.friction / (2 * Math.PI ** 2 * 1000)).toBeCloseTo(1, 4)
    expect(far.film).toBeCloseTo(1, 3)
    expect(far.flow).toBeCloseTo(Math.PI, 2)
    expect(far.side).toBeLessThan(0.001)
  })
  test('far below, the journal touches', () => {
    const near = raimondiBoyd({ sommerfeld: 1e-7, slenderness: 1 })
    expect(near.film).toBeLessThan(1e-5)
    expect(near.friction).toBeLessThan(2e-5)
    expect(near.side).toBeCloseTo(1, 4)
    expect(near.flow).toBeCloseTo(4.82, 6)
  })
  test('nothing jumps at the ends of a table', () => {
    const table = ready(square)
    for (const end of [table.least, table.most]) for (let column = 0; column < 6; column++) {
      const at = (s: number) => readColumn(table, column, s, Math.log10(s))
      expect(Math.abs(at(end * (1 + 1e-9)) - at(end * (1 - 1e-9)))).toBeLessThan(1e-6)
    }
  })
  test('halfway down from the last row every column is halfway to its limit', () => {
    const table = ready(square)
    const at = (column: number) => readColumn(table, column, table.least / 2, Math.log10(table.least / 2))
    expect(at(0)).toBeCloseTo(0.015, 9)
    expect(at(frictionColumn)).toBeCloseTo(0.257, 9)
    expect(at(flowColumn)).toBeCloseTo(4.82, 9)
    expect(at(sideColumn)).toBeCloseTo((1 + 0.973) / 2, 9)
  })
  test('at twice the last number the departure from centred has halved', () => {
    const table = ready(square)
    const at = (column: number) => readColumn(table, column, 2.66, Math.log10(2.66))
    expect(at(0)).toBeCloseTo(0.95, 9)
    expect(at(1)).toBeCloseTo((85 + 79.5) / 2, 9)
    expect(at(frictionColumn)).toBeCloseTo(2 * Math.PI ** 2 * 2.66 + (26.4 - 2 * Math.PI ** 2 * 1.33) / 2, 9)
    expect(at(flowColumn)).toBeCloseTo((Math.PI + 3.37) / 2, 9)
    expect(at(sideColumn)).toBeCloseTo(0.075, 9)
    expect(at(5)).toBeCloseTo(0.54, 9)
  })
  test('the endless table keeps its ends closed below as well', () => {
    const table = ready(endless)
    expect(readColumn(table, sideColumn, 0.001, -3)).toBe(0)
  })
  test('shorter than a quarter, bearings with the same S (l/d)² are alike', () => {
    const quarter = raimondiBoyd({ sommerfeld: 0.4, slenderness: 0.25 }), eighth = raimondiBoyd({ sommerfeld: 1.6, slenderness: 0.125 })
    expect(eighth.film).toBeCloseTo(quarter.film, 12)
    expect(eighth.side).toBeCloseTo(quarter.side, 12)
    expect(eighth.friction / 1.6).toBeCloseTo(quarter.friction / 0.4, 10)
  })
})

describe('weights of the tables', () => {
  test('add up to one and single out a table at its own shape', () => {
    fc.assert(fc.property(fc.double({ min: 0.2, max: 20, noNaN: true }), (slenderness) => {
      const w = slendernessWeights({ slenderness })
      expect(w.endless + w.square + w.half + w.quarter).toBeCloseTo(1, 9)
    }))
    expect(slendernessWeights({ slenderness: 1 }).square).toBeCloseTo(1, 12)
    expect(slendernessWeights({ slenderness: 0.5 }).half).toBeCloseTo(1, 12)
    expect(slendernessWeights({ slenderness: 0.25 }).quarter).toBeCloseTo(1, 12)
    expect(slendernessWeights({ slenderness: 1e5 }).endless).toBeCloseTo(1, 4)
  })
})

test('short-bearing theory and the tables agree within a tenth of the clearance for a quarter', () => {
  const bearing = { viscosity: 0.01, speed: 300, diameter: 0.08, length: 0.02, clearance: 40e-6 }
  for (const eccentricity of [0.3, 0.5, 0.7]) {
    const load = shortBearingLoad({ ...bearing, eccentricity })
    const sommerfeld = ((1000 ** 2 * 0.01 * 300) / (2 * Math.PI)) / (load / (0.08 * 0.02))
    expect(Math.abs(raimondiBoyd({ sommerfeld, slenderness: 0.25 }).film - (1 - eccentricity))).toBeLessThan(0.1)
    expect(shortBearingEccentricity({ ...bearing, load })).toBeCloseTo(eccentricity, 8)
  }
})
