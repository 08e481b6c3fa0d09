import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { relief } from '@trochoid/compute/oil/fields.ts'
import oilSupply from '@trochoid/compute/oil/oilSupply.calc.ts'
import { oilFlow, oilPressure } from '@trochoid/compute/oil/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { answered } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly opens: number | null; readonly setting: number | null; readonly given: number; readonly taken: number }

/** What the pump moves and what the engine takes, hot, from idle to the last speed of the sweep. */
export default lineFigure<Data>({
  title: 'What the pump moves and what the engine takes',
  says: 'Oil moved by the pump and oil taken by bearings, jets and turbocharger over shaft speed.',
  x: shaftSpeed, y: oilFlow,
  from({ sheet, solved: { idle, points } }) {
    const of: AnyCalculation = oilSupply
    const at = [idle, ...points].filter((p) => p.values['oil.temperature'] !== undefined && p.values['oil.viscosity'] !== undefined)
    const given = at.map((p) => valuesFor(of, sheet, p.values))
    const over = (out: string) => given.map((v) => answered(of, v, out))
    const moved = over('given'), taken = over('taken'), free = over('unrelieved'), held = over('pressure')
    const first = free.findIndex((p, i) => p !== null && held[i] !== null && p > held[i]! * 1.001)
    const last = { given: moved.at(-1), taken: taken.at(-1) }
    if (at.length < 2 || last.given == null || last.taken == null) return null
    const opens = first < 0 ? null : at[first]!.speed
    return {
      given: last.given, taken: last.taken, opens, setting: valueAt(sheet, relief), x: at.map((p) => p.speed),
      lines: [{ name: 'Moved by the pump', y: moved }, { name: 'Taken by the engine', y: taken }],
      ...(opens !== null && { uprights: [{ says: 'relief opens', at: opens }] }),
    }
  },
  summary({ opens, setting, given, taken }, system) {
    const q = shown(oilFlow, system)
    const valve = opens === null ? 'The relief valve stays shut all the way.' : `The relief valve opens at ${shown(shaftSpeed, system).say(opens)}${setting === null ? '' : `, at ${shown(oilPressure, system).say(setting)}`}.`
    return `Hot oil. ${valve} At the last speed the pump moves ${q.say(given)} by its size and speed, of which bearings, jets and turbocharger take ${q.say(taken)}; slip inside the pump and the relief valve account for the rest.`
  },
  without: 'The oil supply of this build could not be worked out, so nothing is drawn.',
})
