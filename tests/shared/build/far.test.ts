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
      // One expectation for each build: one for each of its thousand numbers would take most of a minute.
      const lost = [solved.idle, ...solved.points].flatMap((point) => Object.entries({ ...point.values, ...point.residuals }).filter(([, number]) => !Number.isFinite(number)).map(([name]) => name))
      const spoilt = weighMargins(margins, solved, sheet).map((w) => sentence(w)).filter((text) => /NaN|Infinity|undefined|– %|–\u202f/.test(text))
      expect({ lost, spoilt }, `${path} = ${value}`).toEqual({ lost: [], spoilt: [] })
    }
  }
})
