import { scaleOf, tracedMap, type Axes, type Pixel, type Trace } from '@trochoid/compute/boost/mapTrace.ts'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'

const straight: Axes = {
  flow: { at: [[100, 900], [1100, 900]], value: [0, 0.6], scale: 'linear' },
  ratio: { at: [[100, 900], [100, 100]], value: [1, 3.6], scale: 'linear' },
}
/** A page photographed askew: turned by ten degrees and sheared, the axes read at other places than where they cross. */
const askew: Axes = {
  flow: { at: [[180, 910], [1130, 1060]], value: [0.1, 0.6], scale: 'linear' },
  ratio: { at: [[90, 700], [260, 120]], value: [1.5, 3.5], scale: 'log' },
}

describe('the scale of a picture', () => {
  it('reads its own calibration places back, each along its own axis', () => {
    for (const axes of [straight, askew]) {
      const scale = scaleOf(axes)!
      axes.flow.at.forEach((at, i) => expect(scale.values(at)[0]).toBeCloseTo(axes.flow.value[i]!, 9))
      axes.ratio.at.forEach((at, i) => expect(scale.values(at)[1]).toBeCloseTo(axes.ratio.value[i]!, 9))
    }
  })
  it('goes to the picture and back', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 0.9, noNaN: true }), fc.double({ min: 1, max: 5, noNaN: true }), fc.constantFrom(straight, askew), (m, r, axes) => {
      const scale = scaleOf(axes)!
      const [back, up] = scale.values(scale.pixel([m, r]))
      expect(back).toBeCloseTo(m, 9)
      expect(up).toBeCloseTo(r, 9)
    }))
  })
  it('has none where an axis has no length, both run alike, or a logarithm has no value', () => {
    expect(scaleOf({ ...straight, flow: { ...straight.flow, at: [[5, 5], [5, 5]] } })).toBeNull()
    expect(scaleOf({ ...straight, ratio: { ...straight.ratio, at: [[100, 900], [900, 900]] } })).toBeNull()
    expect(scaleOf({ ...straight, flow: { ...straight.flow, scale: 'log' } })).toBeNull()
    expect(scaleOf({ ...straight, ratio: { ...straight.ratio, value: [2, 2] } })).toBeNull()
  })
})

/** Close enough that the ends of a line come near the edges of the map, as one traces them. */
const rays = 96
/** Lines of equal efficiency of a map, found by halving along rays from its best point. */
function rings(map: typeof mediumMap, levels: readonly number[]): { efficiency: number; points: [number, number][] }[] {
  const spots = map.lines.flatMap((line) => line.flow.map((m, i) => [m, line.ratio[i]!, line.efficiency[i]!] as const))
  const [m0, r0] = spots.reduce((best, p) => (p[2] > best[2] ? p : best))
  const inside = (m: number, r: number, level: number): boolean => {
    if (r < 1.01 || m <= 0) return false
    const at = compressorAt({ map, flow: m, ratio: r })
    return at.outside === 0 && at.estimated === 0 && at.efficiency >= level
  }
  return levels.map((efficiency) => ({
    efficiency,
    points: Array.from({ length: rays }, (_, k): [number, number] | null => {
      const [dm, dr] = [0.5 * Math.cos((2 * k * Math.PI) / rays), 2.4 * Math.sin((2 * k * Math.PI) / rays)]
      let low = 0, high = 1
      for (let i = 0; i < 40; i++) { const mid = (low + high) / 2; if (inside(m0 + mid * dm, r0 + mid * dr, efficiency)) low = mid; else high = mid }
      const [m, r] = [m0 + low * dm, r0 + low * dr]
      const at = compressorAt({ map, flow: m, ratio: r })
      return Math.abs(at.efficiency - efficiency) < 1e-4 ? [m, r] : null
    }).filter((p) => p !== null),
  }))
}

describe.each([['straight', straight], ['askew', askew]] as const)('a map traced from a picture, %s', (_, axes) => {
  const scale = scaleOf(axes)!
  const pixel = ([m, r]: readonly [number, number]): Pixel => scale.pixel([m, r]).map(Math.round) as unknown as Pixel
  const trace: Trace = {
    axes, name: 'Traced', referenceTemperature: mediumMap.referenceTemperature, referencePressure: mediumMap.referencePressure,
    surge: [],
    lines: mediumMap.lines.map((line) => ({ speed: line.speed, points: line.flow.map((m, i) => pixel([m, line.ratio[i]!])) })),
    islands: rings(mediumMap, [0.55, 0.6, 0.65, 0.69, 0.72, 0.74, 0.755]).map(({ efficiency, points }) => ({ efficiency, points: points.map(pixel) })),
  }
  const traced = tracedMap(trace)
  if (!traced.ok) throw new Error(traced.says)
  it('gives back flow and ratio within a whole pixel, which is well within 1 %', () => {
    traced.map.lines.forEach((line, i) => line.flow.forEach((m, j) => {
      expect(Math.abs(m - mediumMap.lines[i]!.flow[j]!)).toBeLessThan(0.01 * 0.55)
      expect(Math.abs(line.ratio[j]! / mediumMap.lines[i]!.ratio[j]! - 1)).toBeLessThan(0.01)
    }))
  })
  it('gives back efficiencies within 0.01, at the four corners, which no line encloses, within 0.02', () => {
    const corner = (i: number, j: number): boolean => (i === 0 || i === mediumMap.lines.length - 1) && (j === 0 || j === mediumMap.lines[i]!.flow.length - 1)
    traced.map.lines.forEach((line, i) => line.efficiency.forEach((e, j) => {
      const own = mediumMap.lines[i]!.efficiency[j]!
      if (own > 0.55) expect(Math.abs(e - own)).toBeLessThan(corner(i, j) ? 0.02 : 0.01)
    }))
  })
  it('begins its lines where the surge line was traced', () => {
    const surge = mediumMap.lines.map((line) => pixel([line.flow[1]!, line.ratio[1]!]))
    const cut = tracedMap({ ...trace, surge: [pixel([0.01, 1.01]), ...surge] })
    if (!cut.ok) throw new Error(cut.says)
    cut.map.lines.slice(1).forEach((line, i) => expect(Math.abs(line.flow[0]! - mediumMap.lines[i + 1]!.flow[1]!)).toBeLessThan(0.006))
  })
  it('puts right what a trembling hand did at choke, and lines traced from choke to surge', () => {
    const back = tracedMap({ ...trace, lines: trace.lines.map(({ speed, points }) => ({ speed, points: [...points].reverse().map(([x, y], j): Pixel => (j === 0 ? [x - 8, y] : [x, y])) })) })
    if (!back.ok) throw new Error(back.says)
    for (const line of back.map.lines) line.flow.forEach((m, j) => j > 0 && expect(m).toBeGreaterThan(line.flow[j - 1]!))
  })
})

it('says what a trace still lacks', () => {
  const bare: Trace = { axes: straight, name: '', referenceTemperature: 298, referencePressure: 1e5, surge: [], lines: [], islands: [] }
  const says = (of: Partial<Trace>): string => { const r = tracedMap({ ...bare, ...of }); return r.ok ? 'made' : r.says }
  const line = { speed: 5000, points: [[200, 700], [300, 720], [400, 850]] as Pixel[] }
  const above = { speed: 6000, points: [[300, 500], [400, 520], [600, 700]] as Pixel[] }
  expect(says({ axes: { ...straight, flow: { ...straight.flow, value: [0, 0] } } })).toContain('axes')
  expect(says({})).toContain('two speed lines')
  expect(says({ lines: [line, { speed: 6000, points: [[300, 400]] }] })).toContain('fewer than three')
  expect(says({ lines: [line, { ...line, speed: 6000 }] })).toContain('crosses')
  expect(says({ lines: [line, above] })).toContain('equal efficiency')
})
