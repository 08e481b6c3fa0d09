import { type AnyCalculation, type Values } from '../calculation/calculation.ts'
import { startValues } from '../calculation/samples.ts'
import { type Point, type Solved } from './point.ts'
import { valueAt, type Sheet } from './sheet.ts'

/** The point that stands for a build where one is wanted: that of greatest power. Build-level and idle values are added where it has none. */
export function demoPoint(solved: Solved): Readonly<Record<string, number>> {
  const best = solved.points.reduce<Point | null>((a, p) => ((p.values['engine.power'] ?? -1) > (a?.values['engine.power'] ?? -1) ? p : a), null)
  return { ...solved.idle.values, ...solved.build, ...best?.values }
}

/** Inputs of a calculation as a build gives them: its fields, the values of one of its points, and where both are silent the start values. */
export function valuesFor(of: AnyCalculation, sheet: Sheet, point: Readonly<Record<string, number>>): Values {
  const start = startValues(of)
  return Object.fromEntries(Object.entries(of.in).map(([name, input]) => {
    if (input.origin === 'field') return [name, valueAt(sheet, input) ?? start[name] ?? null]
    if (input.origin === 'point') return [name, point[input.path] ?? start[name] ?? null]
    return [name, input.default]
  }))
}
