import { afterEach, expect, test, vi } from 'vitest'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { storage, tab } from './browser.ts'

afterEach(() => { vi.unstubAllGlobals(); vi.doUnmock('@trochoid/compute/build/corrections.ts') })
const weigh = (sheet: ReturnType<typeof emptySheet>) => weighMargins(margins, solveBuild(sheet), sheet)

test('a build weighed by an earlier edition says what moved until the reader has seen it; other builds do not', async () => {
  const local = storage()
  const first = await tab(local)
  first.edit.open(emptySheet('Club car'))
  const id = first.own.builds.get().chosen
  const one = await import('../../src/state/weighed.ts')
  one.remember(first.own.builds.get().own[id]!, weigh(emptySheet('Club car')))
  expect(one.corrected.get()).toBeNull()

  const correction = { edition: 2, date: '2027-01-01', says: 'Flow at pressure.', margins: ['fuel-pump-flow'] }
  vi.doMock('@trochoid/compute/build/corrections.ts', () => ({ edition: 2, corrections: [correction] }))
  const second = await tab(local)
  const two = await import('../../src/state/weighed.ts')
  const sheet = second.own.builds.get().own[id]!
  const now = weigh(sheet).map((w) => (w.id === 'fuel-pump-flow' ? { ...w, left: 0.5 } : w))
  two.remember(sheet, now)
  expect(two.corrected.get()).toMatchObject({ name: 'Club car', changed: false, corrections: [correction], moved: [{ id: 'fuel-pump-flow', by: [correction] }] })
  second.edit.edit(id, (s) => setEntry(s, 'engine.compressionRatio', { value: 9.5 }))
  two.remember(second.own.builds.get().own[id]!, now)
  expect(two.corrected.get()).toMatchObject({ changed: true })
  two.corrected.get()!.accept()
  two.remember(second.own.builds.get().own[id]!, now)
  expect(two.corrected.get()).toBeNull()
})
