import { expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { emptySheet, setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { bar, litre } from '@trochoid/compute/quantity/si.ts'
import { lineIds, measuredItems } from '@trochoid/compute/record/items.ts'
import { startChecks, type Check } from '@trochoid/compute/record/startChecks.ts'
import { lineOfStep, startStages, type StartStep } from '@trochoid/compute/record/startSteps.ts'

const steps = startStages.flatMap((stage) => stage.steps.map(([id]) => id))
const checksOf = (sheet: Sheet) => startChecks(sheet, solveBuild(sheet))
const numbers = (check: Check) => Object.fromEntries(check.numbers.map((n) => [n.name, n.value]))
const street = checksOf(builds.street)

test('every step is told, is a line of the record, and asks for figures that the record has', () => {
  expect(Object.keys(street).sort()).toEqual([...steps].sort())
  const items = new Set(measuredItems.map(({ id }) => id))
  for (const step of steps) {
    expect(lineIds.has(lineOfStep(step)), step).toBe(true)
    for (const line of street[step].measured ?? []) expect(items.has(line), line).toBe(true)
  }
})
test('lines that were ticked in records of before keep their names', () => {
  const before = ['extinguisher', 'fuel-leak', 'oil-filled', 'cranked', 'coolant-bled', 'premix', 'timing', 'sensors', 'started', 'leaks', 'retorque']
  expect(before.filter((id) => !steps.includes(id as StartStep))).toEqual([])
})
test('with a bar on its hose a regulator that looks at the manifold puts a bar on the rail; one that looks outside does not move', () => {
  const at = setEntry(builds.street, 'fuel.regulator.setting', { value: bar(3) })
  const { 'With this on the hose': hose, 'the rail must stand at': rail } = numbers(checksOf(at).regulator)
  expect(Number(rail) - Number(hose)).toBeCloseTo(bar(3), 3)
  expect(numbers(checksOf(setEntry(at, 'fuel.regulator.reference', { value: 'atmosphere' })).regulator)).toEqual({ 'Rail pressure at all times': bar(3) })
})
test('premix: a hundredth of 20 litres is 200 mL, a share of nothing asks for the metering pump', () => {
  const at = setEntry(builds.street, 'fuel.premix.share', { value: 0.01 })
  expect(numbers(checksOf(at).premix)['Oil for a first 20 litres']).toBeCloseTo(litre(0.2), 9)
  expect(checksOf(setEntry(at, 'fuel.premix.share', { value: 0 })).premix.how).toContain('metering pump')
})
test('the spring alone opens at preload over area, unless the bench has said otherwise', () => {
  const spring = setEntry(setEntry(setEntry(builds.street, 'boost.actuator.firstMovement', undefined), 'boost.actuator.springPreload', { value: 500 }), 'boost.actuator.diaphragmArea', { value: 0.005 })
  expect(numbers(checksOf(spring).actuator)['First movement, from spring and diaphragm']).toBeCloseTo(1e5, 6)
  expect(numbers(checksOf(setEntry(spring, 'boost.actuator.firstMovement', { value: 8e4 })).actuator)['First movement']).toBe(8e4)
})
test('a sheet that nobody filled says of each of its numbers that it is common practice', () => {
  const all = Object.values(checksOf(emptySheet())).flatMap((check) => check.numbers)
  expect([...new Set(all.map(({ from }) => from))].sort()).toEqual(['common', 'model'])
})
test('what the sheet does not know is not known, and nothing else fails', () => {
  const unknown = [...allFields.keys()].reduce((sheet, path) => setEntry(sheet, path, { value: null }), emptySheet())
  for (const { numbers } of Object.values(checksOf(unknown))) for (const { name, value } of numbers) expect(value, name).toBeNull()
})
