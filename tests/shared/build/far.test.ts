import { expect, test } from 'vitest'
import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { sentence, weighMargins } from '@trochoid/compute/build/margins.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { weigh } from '@trochoid/compute/quantity/read.ts'
import { shownUnit } from '@trochoid/compute/quantity/write.ts'

const speeds = [210, 840]

test('no number that a field takes breaks the solve, leaves one that is no number, or spoils a sentence', { timeout: 120_000 }, () => {
  for (const { path, shape } of allFields.values()) {
    if (!isQuantity(shape)) continue
    const [low, high] = shape.range
    for (const value of [low, high, low / 10, high * 10, high * 900, 0].map((n) => (shape.whole ? Math.round(n) : n))) {
      if (!weigh(value, shownUnit(shape), shape).ok) continue
      const sheet = setEntry(builds.street, path, { value })
      const solved = solveBuild(sheet, speeds)
      for (const point of [solved.idle, ...solved.points]) {
        for (const [name, number] of Object.entries({ ...point.values, ...point.residuals })) expect(Number.isFinite(number), `${name} at ${path} = ${value}`).toBe(true)
      }
      for (const w of weighMargins(margins, solved, sheet)) expect(sentence(w), `${path} = ${value}`).not.toMatch(/NaN|Infinity|undefined|– %|–\u202f/)
    }
  }
})
