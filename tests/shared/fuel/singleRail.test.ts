import { expect, test } from 'vitest'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { remediesFor } from '@trochoid/compute/build/remedies.ts'
import { setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'

const speeds = [300, 600]
const weigh = (sheet: Sheet) => weighMargins(margins, solveBuild(sheet, speeds), sheet)
/** The street build on one rail: a large injector for each rotor and no second stage. */
const single = setEntry(setEntry(street, 'fuel.secondary.perRotor', { value: 0 }), 'fuel.primary.ratedFlow', { value: 2250e-6 / 60 })

test('a build whose single rail cannot idle is told so, with the largest injector that would', () => {
  const idle = weigh(single).find((w) => w.id === 'primary-pulse-idle')!
  expect(idle.state).toBe('short')
  const cure = [...remediesFor(idle.margin, single, weigh)].find((c) => c.field === 'fuel.primary.ratedFlow')!
  expect(cure.value).toBeGreaterThan(0)
  const largest = cure.value as number
  const state = (flow: number) => weigh(setEntry(single, 'fuel.primary.ratedFlow', { value: flow })).find((w) => w.id === 'primary-pulse-idle')!.state
  expect(state(largest)).toBe('holds')
  expect(state(largest * 1.15)).not.toBe('holds')
})
test('the two-stage street build itself is not short there', () => expect(weigh(street).find((w) => w.id === 'primary-pulse-idle')!.state).not.toBe('short'))
