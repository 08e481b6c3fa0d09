import { coolerRatedEffectiveness } from '@trochoid/compute/boost/fields.ts'
import { at as boost } from '@trochoid/compute/boost/point.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import type { Point } from '@trochoid/compute/build/point.ts'
import { setEntry, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { primaryDeadTime, primaryFlow, regulatorSetting, secondaryDeadTime, secondaryFlow } from '@trochoid/compute/fuel/fields.ts'
import { at as fuel } from '@trochoid/compute/fuel/point.ts'
import { fuelChange } from '@trochoid/compute/fuel/quantities.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { ms } from '@trochoid/compute/quantity/si.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

/** The sheet with numbers of it changed, those it does not know left unknown. */
const changed = (sheet: Sheet, fields: readonly Field<Quantity>[], how: (value: number) => number): Sheet =>
  fields.reduce((s, f) => { const value = valueAt(s, f); return value === null ? s : setEntry(s, f.path, { ...s.entries[f.path], value: how(value) }) }, sheet)

const faults: readonly { readonly name: string; readonly of: (sheet: Sheet) => Sheet }[] = [
  { name: 'Injectors pass 5\u202f% less', of: (s) => changed(s, [primaryFlow, secondaryFlow], (v) => v * 0.95) },
  { name: 'Regulator 10\u202f% low', of: (s) => changed(s, [regulatorSetting], (v) => v * 0.9) },
  { name: 'Dead times 0.1\u202fms longer', of: (s) => changed(s, [primaryDeadTime, secondaryDeadTime], (v) => v + ms(0.1)) },
  { name: 'Charge cooler a fifth worse', of: (s) => changed(s, [coolerRatedEffectiveness], (v) => v * 0.8) },
]
const sameBoost = 0.01

/** By how much of itself the duty of the stage that is open longest moves, for one wrong number at a time. */
export default lineFigure<Drawn>({
  title: 'What a wrong number does to the duty',
  says: 'Change of the duty of the stage that is open longest, as a share of itself, over shaft speed, for four faults of the car.',
  x: shaftSpeed, y: fuelChange, named: { y: 'Change of the duty' },
  beside: (sheet) => faults.map(({ of }) => of(sheet)),
  from({ solved, beside }) {
    const of = (points: readonly Point[], i: number, path: string): number => points[i]?.values[path] ?? NaN
    // Where boost itself moves with the fault, the comparison would be of two engines: only the stretch up to the highest speed that is free of it.
    const differs = (i: number): boolean => !beside.every(({ points }) => Math.abs(of(points, i, boost.boost.path) / of(solved.points, i, boost.boost.path) - 1) < sameBoost)
    const first = solved.points.reduce((after, _, i) => (differs(i) ? i + 1 : after), 0)
    const alike = solved.points.map((_, i) => i).slice(first)
    return {
      x: alike.map((i) => solved.points[i]!.speed),
      lines: faults.map(({ name }, k) => ({ name, y: alike.map((i) => { const share = of(beside[k]!.points, i, fuel.worstDuty.path) / of(solved.points, i, fuel.worstDuty.path) - 1; return Number.isFinite(share) ? share : null }) })),
    }
  },
  summary({ x, lines }, system) {
    const d = shown(fuelChange, system), n = shown(shaftSpeed, system)
    const ends = lines.map(({ name, y }) => `${name}: ${y[0] == null ? 'nothing' : d.say(y[0])} at the lower end, ${y.at(-1) == null ? 'nothing' : d.say(y.at(-1)!)} at the upper.`)
    return `Each car differs from the sheet by one thing and is driven at the same lambda, from ${n.say(x[0]!)} to ${n.say(x.at(-1)!)}, where boost is the same in all. ${ends.join(' ')}`
  },
  without: 'This build has no full-throttle points at which the four can be compared, so nothing is drawn.',
})
