import { describe, expect, test } from 'vitest'
import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import heatFlow from '../../src/article/figures/heat-flow.tsx'

type Data = { fuel: number; outside: number; back: number; exhaust: number; ends: readonly { name: string; heat: number }[] }
const sheets = { ...builds, 'a winter morning': setEntry(builds.street, 'site.airTemperature', { value: 263.15 }), 'a hot day': setEntry(builds.street, 'site.airTemperature', { value: 313.15 }) }

describe.each(Object.entries(sheets))('the flow drawing of %s', (_, sheet) => {
  const solved = solveBuild(sheet)
  const data = heatFlow.from({ sheet, solved, point: demoPoint(solved), weighed: weighMargins(margins, solved, sheet), beside: [], weighedBeside: [] }) as Data
  const heat = (name: string): number => data.ends.find((e) => e.name === name)!.heat

  test('what goes in over the boundary of the whole car comes out of it', () => {
    const out = data.ends.reduce((sum, e) => sum + e.heat, 0)
    expect(out / (data.fuel + data.outside)).toBeCloseTo(1, 9)
  })
  test('what the exhaust port passes ends in tailpipe, charge cooler, bearings and the charge', () => {
    expect((heat('Tailpipe, as heat') + heat('Charge cooler') + heat('Turbo bearings') + data.back) / data.exhaust).toBeCloseTo(1, 9)
  })
  test('no way carries less than nothing', () => {
    for (const e of data.ends) expect(e.heat, e.name).toBeGreaterThan(0)
    expect(data.back).toBeGreaterThan(0)
  })
})
