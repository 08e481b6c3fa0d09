import { mapFaults } from '@trochoid/compute/boost/mapFaults.ts'
import { mapFile, readMapFile } from '@trochoid/compute/boost/mapFile.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { describe, expect, it } from 'vitest'

const head = 'reference temperature, 25 °C\nreference pressure, 100 kPa\n'
const rows = '50000,0.05,1.3,62\n50000,0.1,1.28,70\n50000,0.15,1.1,58\n90000,0.12,2.1,64\n90000,0.2,2.05,74\n90000,0.28,1.5,60\n'
const read = (text: string, asked = {}): CompressorMap => {
  const r = readMapFile(text, asked)
  if (!r.ok) throw new Error(r.says)
  return r.map
}
const says = (text: string, asked = {}): string => {
  const r = readMapFile(text, asked)
  return r.ok ? 'read' : r.says
}

describe('a map as a table', () => {
  it('comes back as it was written', () => {
    const back = read(mapFile(mediumMap))
    expect(back.name).toBe(mediumMap.name)
    expect(back.referenceTemperature).toBeCloseTo(mediumMap.referenceTemperature, 6)
    back.lines.forEach((line, i) => {
      expect(line.speed / mediumMap.lines[i]!.speed).toBeCloseTo(1, 6)
      line.flow.forEach((flow, j) => expect(flow / mediumMap.lines[i]!.flow[j]!).toBeCloseTo(1, 6))
      line.efficiency.forEach((e, j) => expect(e).toBeCloseTo(mediumMap.lines[i]!.efficiency[j]!, 6))
    })
    expect(mapFaults(back)).toEqual([])
  })
  it.each([
    ['commas', `${head}speed rpm,flow kg/s,pressure ratio,efficiency %\n${rows}`],
    ['pasted from a spreadsheet', `${head}speed [rpm],flow [kg/s],pressure ratio,efficiency [%]\n${rows}`.replaceAll(',', '\t')],
    ['decimal commas', `${head}speed (rpm),flow (kg/s),pressure ratio,efficiency (%)\n${rows}`.replaceAll(',', ';').replaceAll('.', ',')],
    ['units in a row of their own', `${head}speed,flow,pressure ratio,efficiency\nrpm,kg/s,,%\n${rows}`],
    ['other columns, another order, quoted cells', `${head}note,efficiency %,pressure ratio,flow g/s,speed rpm\n${rows.trim().split('\n').map((r) => { const [n, m, p, e] = r.split(','); return `"a",${e},${p},${Number(m) * 1000},${n}` }).join('\n')}`],
    ['pounds a minute', `${head}speed rpm,flow lb/min,pressure ratio,efficiency\n${rows.trim().split('\n').map((r) => { const [n, m, p, e] = r.split(','); return `${n},${(Number(m) * 60) / 0.45359237},${p},${Number(e) / 100}` }).join('\n')}`],
  ])('is read with %s', (_, text) => {
    const map = read(text)
    expect(map.lines.map(({ speed }) => (speed * 30) / Math.PI)).toEqual([expect.closeTo(50000, 6), expect.closeTo(90000, 6)])
    expect(map.lines[1]!.flow[1]).toBeCloseTo(0.2, 9)
    expect(map.lines[1]!.ratio[1]).toBe(2.05)
    expect(map.lines[1]!.efficiency[1]).toBeCloseTo(0.74, 9)
    expect([map.referenceTemperature, map.referencePressure]).toEqual([expect.closeTo(298.15, 9), expect.closeTo(1e5, 6)])
  })
  it('turns flow by volume into mass at the reference conditions and says so', () => {
    const r = readMapFile(`${head}speed rpm,flow m³/s,pressure ratio,efficiency %\n${rows}`)
    if (!r.ok) throw new Error(r.says)
    // Dry air of ISO 2533 at 25 °C and 100 kPa: 100000 / (287.05287 × 298.15).
    expect(r.map.lines[0]!.flow[0]).toBeCloseTo(0.05 * (100000 / (287.05287 * 298.15)), 9)
    expect(r.told.join()).toContain('density of dry air')
  })
  it('asks for reference conditions that are not stated, and takes them', () => {
    const bare = `speed rpm,flow kg/s,pressure ratio,efficiency %\n${rows}`
    const r = readMapFile(bare)
    expect(r).toMatchObject({ ok: false, asks: ['temperature', 'pressure'] })
    expect(read(bare, { temperature: 300, pressure: 98000 })).toMatchObject({ referenceTemperature: 300, referencePressure: 98000 })
  })
  it('says what is missing or unreadable, with the line', () => {
    expect(says('')).toContain('nothing here')
    expect(says('some words\nwithout columns')).toContain('No columns')
    expect(says(`speed rpm,flow,pressure ratio,efficiency\n${rows}`)).toContain('does not say its unit')
    expect(says(`speed rpm,flow kg/s,efficiency\n${rows}`)).toContain('pressure ratio')
    expect(says(`${head}speed rpm,flow kg/s,pressure ratio,efficiency\n50000,0.05,x,60`)).toContain('Line 4')
    expect(says(`reference temperature,25\nspeed rpm,flow kg/s,pressure ratio,efficiency\n${rows}`)).toContain('with its unit')
    expect(says('speed rpm;flow kg/s;pressure ratio;efficiency\n50000;1,234;1.3;60')).toContain('1.234 or 1234')
    expect(says('x'.repeat(500_000))).toContain('500000 characters')
  })
  it('puts rows in order and says so', () => {
    const r = readMapFile(`${head}speed rpm,flow kg/s,pressure ratio,efficiency %\n${rows.trim().split('\n').reverse().join('\n')}`)
    if (!r.ok) throw new Error(r.says)
    expect(r.told.join()).toContain('put in order')
    expect(mapFaults(r.map).filter(({ weight }) => weight === 'wrong')).toEqual([])
  })
})

describe('what looks wrong in a map', () => {
  const changed = (edit: (map: CompressorMap) => void): string => {
    const map = structuredClone(mediumMap) as CompressorMap
    edit(map)
    return mapFaults(map).map(({ weight, says }) => `${weight}: ${says}`).join('\n')
  }
  type Open = { speed: number; flow: number[]; ratio: number[]; efficiency: number[] }
  const line = (map: CompressorMap, i: number) => map.lines[i] as unknown as Open
  it.each([
    ['two points at one flow', (m: CompressorMap) => { line(m, 1).flow[2] = line(m, 1).flow[1]! }, 'wrong: .*same flow'],
    ['an efficiency above one', (m: CompressorMap) => { line(m, 2).efficiency[3] = 1.02 }, 'wrong: .*without loss'],
    ['a ratio that rises', (m: CompressorMap) => { line(m, 2).ratio[5] = 3 }, 'wrong: .*higher pressure ratio'],
    ['lines that cross', (m: CompressorMap) => { line(m, 3).ratio = line(m, 3).ratio.map((r) => r - 0.5) }, 'wrong: .*crosses'],
    ['a line of two points', (m: CompressorMap) => { for (const k of ['flow', 'ratio', 'efficiency'] as const) line(m, 0)[k] = line(m, 0)[k].slice(0, 2) }, 'wrong: .*three or more'],
    ['a surge that moves inward', (m: CompressorMap) => { line(m, 4).flow[0] = 0.01 }, 'doubt: .*begins at less flow'],
    ['a misread speed', (m: CompressorMap) => { line(m, 6).speed *= 1.4 }, 'doubt: .*misread'],
    ['efficiencies too good', (m: CompressorMap) => { for (let i = 0; i < 7; i++) line(m, i).efficiency = line(m, i).efficiency.map((e) => e + 0.15) }, 'doubt: .*best efficiency'],
  ])('%s', (_, edit, said) => expect(changed(edit)).toMatch(new RegExp(said)))
})
