import { describe, expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { emptySheet, setEntry, valueAt } from '@trochoid/compute/build/sheet.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { type CompressorMap, type Points } from '@trochoid/compute/quantity/quantity.ts'
import { degC, mm, percent } from '@trochoid/compute/quantity/si.ts'
import { exact } from '@trochoid/compute/uncertainty/exact.ts'
import { inputsOf, moved } from '@trochoid/compute/uncertainty/inputs.ts'

const of = (path: string, sheet = emptySheet()) => inputsOf(sheet, allFields).find((input) => input.id === path)!
const set = (path: string, value: unknown, from: 'measured' | 'maker' | 'common' | 'guess') => setEntry(emptySheet(), path, { value, from })

test('what is exact exists in the sheet, once', () => {
  for (const path of exact.keys()) expect(allFields.has(path), path).toBe(true)
  for (const path of exact.keys()) expect(of(path)?.spread.half ?? 0, path).toBe(0)
})
describe('a tolerance', () => {
  test('is the quantity’s step once for a measurement, twice for a maker’s figure, four times for common practice, six times for a guess', () => {
    const at = (from: 'measured' | 'maker' | 'common' | 'guess') => of('oil.rotorBearing.diameter', set('oil.rotorBearing.diameter', mm(72), from)).spread
    expect(['measured', 'maker', 'common', 'guess'].map((from) => at(from as 'guess').half / mm(0.01)).map(Math.round)).toEqual([1, 2, 4, 6])
    expect(['measured', 'maker', 'common', 'guess'].map((from) => at(from as 'guess').form)).toEqual(['normal', 'rectangular', 'triangular', 'rectangular'])
  })
  test('is no more than half of a number that cannot be negative, but a temperature has no such end', () => {
    expect(of('cooling.surfaceShare').spread.half).toBeCloseTo(percent(1.5), 12)
    expect(of('boost.maxChargeTemperature', set('boost.maxChargeTemperature', degC(60), 'guess')).usual.half).toBe(0)
    expect(of('idle.chargeTemperature').of.kind).toBe('temperatureDifference')
    expect(of('idle.chargeTemperature').spread.half).toBe(12)
  })
  test('is what the reader says', () => {
    const said = { 'engine.quality': { form: 'normal', half: 0.01 } as const }
    expect(inputsOf(emptySheet(), allFields, said).find((i) => i.id === 'engine.quality')!.spread).toEqual(said['engine.quality'])
  })
})
test('counts, choices, grades and what is not known have none', () => {
  for (const path of ['engine.rotors', 'engine.describedBy', 'oil.grade', 'oil.mainBearing.spacing']) expect(of(path), path).toBeUndefined()
})

describe('moving the sheet', () => {
  const inputs = inputsOf(builds.street, allFields)
  const by = (id: string, d: number) => moved(builds.street, inputs, inputs.map((i) => (i.id === id ? d : 0)))
  test('moves one number and leaves all others as they are', () => {
    const sheet = by('engine.compressionRatio', 0.2)
    expect(sheet.entries['engine.compressionRatio']).toMatchObject({ value: 9.2, from: 'measured' })
    expect({ ...sheet.entries, 'engine.compressionRatio': null }).toEqual({ ...builds.street.entries, 'engine.compressionRatio': null })
  })
  test('moves a curve as a whole, and the flows or the efficiencies of a map', () => {
    const curve = valueAt(builds.street, allFields.get('engine.veCurve')!) as Points
    expect((by('engine.veCurve', 0.01).entries['engine.veCurve']!.value as Points).y).toEqual(curve.y.map((y) => y + 0.01))
    const map = valueAt(builds.street, allFields.get('boost.compressorMap')!) as CompressorMap
    const flows = (by('boost.compressorMap#flow', 0.1).entries['boost.compressorMap']!.value as CompressorMap).lines[0]!
    expect(flows.flow[0]).toBeCloseTo(map.lines[0]!.flow[0]! * 1.1, 12)
    expect(flows.efficiency).toEqual(map.lines[0]!.efficiency)
    expect((by('boost.compressorMap#efficiency', -0.02).entries['boost.compressorMap']!.value as CompressorMap).lines[0]!.efficiency[0]).toBeCloseTo(map.lines[0]!.efficiency[0]! - 0.02, 12)
  })
  test('goes no further than what the quantity can be', () => {
    expect(by('boost.mechanicalEfficiency', 0.5).entries['boost.mechanicalEfficiency']!.value).toBe(1)
    expect(by('engine.overlapFactor', -5).entries['engine.overlapFactor']!.value).toBe(0)
  })
})
