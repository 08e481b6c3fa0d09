import { globSync } from 'node:fs'
import { basename, join } from 'node:path'
import { render } from 'preact-render-to-string'
import { describe, expect, test } from 'vitest'
import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { emptySheet, setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import type { AnyFigure, Build } from '../../src/article/figures/figure.ts'

const folder = join(import.meta.dirname, '../../src/article/figures')
const sheets: Readonly<Record<string, Sheet>> = {
  ...builds,
  'a sheet nobody has touched': emptySheet(),
  'a build without a compressor map': setEntry(builds.street, 'boost.compressorMap', { value: null }),
  'a winter oil, no primaries, an unknown clearance': ['oil.grade', 'fuel.primary.perRotor', 'oil.rotorBearing.clearance'].reduce((s, path, i) => setEntry(s, path, { value: ['20W', 0, null][i] }), builds.street as Sheet),
}
const looked = (sheet: Sheet) => {
  const solved = solveBuild(sheet)
  return { solved, weighed: weighMargins(margins, solved, sheet) }
}
const cases = Object.entries(sheets).map(([name, sheet]) => ({ name, sheet, ...looked(sheet) }))
const modules = await Promise.all(globSync('*.tsx', { cwd: folder }).map(async (file) => ({ id: basename(file, '.tsx'), figure: ((await import(join(folder, file))) as { default?: AnyFigure }).default })))
const figures = modules.filter((m): m is { id: string; figure: AnyFigure } => m.figure !== undefined)

describe.each(figures)('$id', ({ figure }) => {
  test.each(cases)('draws, says and tables $name without a hole in its numbers', ({ sheet, solved, weighed }) => {
    const others = (figure.beside?.(sheet) ?? []).map(looked)
    const build: Build = { sheet, solved, point: demoPoint(solved), weighed, beside: others.map((o) => o.solved), weighedBeside: others.map((o) => o.weighed) }
    const data = figure.from(build)
    for (const system of ['metric', 'imperial'] as const) {
      const { Picture } = figure
      const drawn = render(<Picture data={data} system={system} />)
      const { head, rows } = figure.table(data, system)
      for (const text of [drawn, figure.summary(data, system), head.join(' '), ...rows.map((r) => r.join(' '))]) expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object/)
      expect(figure.summary(data, system).length).toBeGreaterThan(30)
      for (const row of rows) expect(row).toHaveLength(head.length)
    }
  })
})
