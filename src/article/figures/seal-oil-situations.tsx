import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { sealDose } from '@trochoid/compute/oil/quantities.ts'
import { referenceDose } from '@trochoid/compute/oil/fields.ts'
import sealOil from '@trochoid/compute/oil/sealOil.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { scale } from '../../islands/chart/scale.ts'
import { figure, type Build } from './figure.ts'
import { answered } from './plot/answered.ts'
import { round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'
import { firstFull } from './staging.ts'

type Case = { says: string; metered: number; premixed: number }
type Data = { cases: Case[]; reference: number | null }

function from({ sheet, solved: { idle, points } }: Build): Data {
  const of: AnyCalculation = sealOil
  const closed = valueAt(sheet, idleManifoldPressure)
  const at = (says: string, values: Readonly<Record<string, number>>, change: Record<string, number> = {}): Case[] => {
    if (values['engine.manifoldPressure'] === undefined || values['fuel.premixOilFlow'] === undefined) return []
    const given = { ...valuesFor(of, sheet, values), ...change }
    const metered = answered(of, given, 'metered'), premixed = answered(of, given, 'premixed')
    return metered === null || premixed === null ? [] : [{ says, metered, premixed }]
  }
  const low = firstFull(points)?.values, high = points.at(-1)?.values
  return {
    reference: valueAt(sheet, referenceDose),
    cases: [
      ...at('Idle', idle.values), ...(low ? at('Full boost, lowest speed', low) : []), ...(high ? at('Full throttle, limit', high) : []),
      ...(high && closed !== null ? at('Overrun from the limit, fuel cut', high, { manifold: closed, premixOil: 0 }) : []),
    ],
  }
}

const top = 40, step = 104, left = 4

export default figure<Data>({
  title: 'Seal oil of a turn in four situations',
  from,
  summary({ cases, reference }, system) {
    const m = shown(sealDose, system)
    if (cases.length === 0) return 'The oil of the seals could not be worked out for this build, so nothing is drawn.'
    const said = cases.map((c) => `${c.says}: pump ${m.say(c.metered)}, premix ${m.say(c.premixed)}`).join('. ')
    return `${said}. During fuel cut premix gives nothing, at the very speed at which the seals slide fastest.${reference === null ? '' : ` The dotted line is the reference that was chosen, ${m.say(reference)}; no published requirement exists.`}`
  },
  Picture({ data: { cases, reference }, system }) {
    if (cases.length === 0) return null
    const m = shown(sealDose, system)
    const x = scale([0, m.of(Math.max(reference ?? 0, ...cases.flatMap((c) => [c.metered, c.premixed])))], [left, 400], 4)
    const bottom = top + cases.length * step
    const bar = (v: number): number => Math.max(1.5, round(x.at(m.of(v)) - left))
    return (
      <Sheet says="Bars of metered and premixed oil in four situations." height={bottom + 50}>
        {x.ticks.map((t) => <g key={t}><line class="grid" x1={round(x.at(t))} x2={round(x.at(t))} y1={top - 26} y2={bottom} /><text x={round(x.at(t))} y={bottom + 20} text-anchor="middle">{t}</text></g>)}
        {cases.map((c, i) => (
          <g key={c.says}>
            <Words x={left} y={top + i * step + 12} strong>{c.says}</Words>
            <rect class="fill" opacity=".65" x={left} y={top + i * step + 22} width={bar(c.metered)} height="24" />
            <Words x={left + bar(c.metered) + 8} y={top + i * step + 40}>pump {m.say(c.metered)}</Words>
            <rect class="fill-accent" opacity=".75" x={left} y={top + i * step + 50} width={bar(c.premixed)} height="24" />
            <Words x={left + bar(c.premixed) + 8} y={top + i * step + 68}>premix {m.say(c.premixed)}</Words>
          </g>
        ))}
        {reference !== null && <line class="cross" x1={round(x.at(m.of(reference)))} x2={round(x.at(m.of(reference)))} y1={top - 26} y2={bottom} />}
        <text class="strong" x="640" y={bottom + 44} text-anchor="end">{m.head()}</text>
      </Sheet>
    )
  },
  table({ cases }, system) {
    const m = shown(sealDose, system)
    return { head: ['Where', m.head('Metering pump'), m.head('Premix'), m.head('Both')], rows: cases.map((c) => [c.says, ...[c.metered, c.premixed, c.metered + c.premixed].map((v) => writeNumber(m.of(v)))]) }
  },
})
