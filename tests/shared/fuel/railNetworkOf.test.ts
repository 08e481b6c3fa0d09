import { expect, test } from 'vitest'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'
import { railNetworkOf } from '@trochoid/compute/fuel/railNetworkOf.ts'
import { signedLineLoss } from '@trochoid/compute/fuel/signedLineLoss.ts'

const fluid = { roughness: 1.5e-6, density: 740, viscosity: 0.26e-3 }
const net = {
  held: 4e5, pumped: 9e-5, primary: 1e-5, secondary: 2.2e-5, rotors: 2, feedBore: 7.94e-3, feedLength: 4, feedFittings: 8, linkBore: 7.94e-3, linkLength: 0.6, linkFittings: 4,
  railBore: 12e-3, railSpacing: 0.17, ...fluid,
}
const used = 2 * (net.primary + net.secondary)
const solve = (layout: 'series' | 'parallel', place: 'after' | 'before', change: Partial<typeof net> = {}) => railNetworkOf({ layout, place, ...net, ...change })
const link = (flow: number): number => signedLineLoss({ flow, bore: net.linkBore, length: net.linkLength, fittings: net.linkFittings, ...fluid })
const spacing = (flow: number): number => signedLineLoss({ flow, bore: net.railBore, length: net.railSpacing, fittings: 0, ...fluid })
const feed = (flow: number): number => lineLossOf({ flow, bore: net.feedBore, length: net.feedLength, fittings: net.feedFittings, ...fluid }).loss

test('mass closes: what is pumped is used or returned, in every layout', () => {
  for (const layout of ['series', 'parallel'] as const) for (const place of ['after', 'before'] as const) {
    const found = solve(layout, place)
    expect(found.returned).toBeCloseTo(net.pumped - used, 15)
    const into = place === 'after' ? net.pumped : used
    if (layout === 'parallel') expect(found.primaryBranch + found.secondaryBranch).toBeCloseTo(into, 15)
    else expect(found.secondaryBranch).toBeCloseTo(found.primaryBranch - 2 * net.primary, 15)
  }
})
test('in series every pressure follows from the one after it by the flow between the two', () => {
  const found = solve('series', 'after')
  expect(found.lastSecondary).toBeCloseTo(net.held, 6)
  expect(found.firstSecondary - found.lastSecondary).toBeCloseTo(spacing(net.pumped - used + net.secondary), 6)
  expect(found.lastPrimary - found.firstSecondary).toBeCloseTo(link(net.pumped - 2 * net.primary), 6)
  expect(found.firstPrimary - found.lastPrimary).toBeCloseTo(spacing(net.pumped - net.primary), 6)
  expect(found.pump - found.firstPrimary).toBeCloseTo(feed(net.pumped), 6)
})
test('in parallel both ways from where they part to where they join lose the same', () => {
  const found = solve('parallel', 'after')
  const behind = (last: number, flow: number, each: number): number => last - link(flow - 2 * each)
  expect(behind(found.lastPrimary, found.primaryBranch, net.primary)).toBeCloseTo(net.held, 3)
  expect(behind(found.lastSecondary, found.secondaryBranch, net.secondary)).toBeCloseTo(net.held, 3)
  expect(found.firstPrimary + link(found.primaryBranch)).toBeCloseTo(found.firstSecondary + link(found.secondaryBranch), 3)
})
test('equal rails in parallel part the flow in halves', () => {
  const found = solve('parallel', 'after', { primary: 1.5e-5, secondary: 1.5e-5 })
  expect(found.primaryBranch).toBeCloseTo(net.pumped / 2, 12)
  expect(found.lastPrimary).toBeCloseTo(found.lastSecondary, 3)
})
test('a large consumer at small return is fed from both ends', () => {
  const found = solve('parallel', 'after', { pumped: used * 1.001, primary: 0.2e-5, secondary: 3e-5 })
  expect(found.secondaryBranch).toBeLessThan(6e-5)
  expect(found.lastPrimary).toBeGreaterThan(net.held)
})
test('dead ends lose pressure from the regulator on; in series more than in parallel', () => {
  const series = solve('series', 'before'), parallel = solve('parallel', 'before')
  expect(series.pump).toBe(net.held)
  expect(series.firstPrimary).toBeCloseTo(net.held - feed(used), 6)
  expect(series.firstSecondary).toBeLessThan(series.lastPrimary)
  expect(parallel.lastSecondary).toBeGreaterThan(series.lastSecondary - 1e3)
  expect(parallel.primaryBranch).toBe(2 * net.primary)
})
test('one rotor has no rail to lose anything in; nothing flowing leaves one pressure everywhere', () => {
  const one = solve('series', 'after', { rotors: 1 })
  expect(one.firstPrimary).toBe(one.lastPrimary)
  const still = solve('parallel', 'after', { pumped: 0, primary: 0, secondary: 0 })
  expect([still.firstPrimary, still.lastPrimary, still.firstSecondary, still.lastSecondary, still.pump].every((p) => p === net.held)).toBe(true)
})
