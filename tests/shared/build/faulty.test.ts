import { expect, test } from 'vitest'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { remediesFor } from '@trochoid/compute/build/remedies.ts'
import { type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { faulty } from '@trochoid/compute/data/builds/faulty.ts'
import { faults } from '@trochoid/compute/data/builds/faulty.faults.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'

const weigh = (sheet: Sheet) => weighMargins(margins, solveBuild(sheet), sheet)
const short = (sheet: Sheet) => weigh(sheet).filter((w) => w.state === 'short').map((w) => w.id).sort()

test('the margins find all four faults and nothing else short', () => expect(short(faulty)).toEqual(faults.map((f) => f.margin).sort()))
test('without the faults nothing is short', () => expect(short(street)).toEqual([]))
test('the faults stand where the file beside the build says', () => {
  const touched = Object.keys(faulty.entries).filter((path) => JSON.stringify(faulty.entries[path]) !== JSON.stringify(street.entries[path]))
  expect(touched.sort()).toEqual(faults.flatMap((f) => f.fields).sort())
})
test.each(faults.map((f) => [f.margin] as const))('a remedy that is said to mend %s mends it', (id) => {
  const margin = margins.find((m) => m.id === id)!
  const cures = [...remediesFor(margin, faulty, weigh)]
  const enough = cures.filter((c) => c.sheet !== null)
  expect(enough.length, JSON.stringify(cures.map((c) => [c.field, c.value]))).toBeGreaterThan(0)
  for (const cure of enough) {
    const after = weigh(cure.sheet!).find((w) => w.id === id)!
    expect(after.state, cure.field).toBe(margin.best ?? 'holds')
    expect(after.left!).toBeGreaterThanOrEqual(after.tight)
  }
}, 60_000)
test('knock stands first and is never known', () => {
  for (const sheet of [street, faulty]) expect(weigh(sheet)[0]).toMatchObject({ id: 'knock', state: 'not known' })
})
