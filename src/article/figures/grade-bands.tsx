import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { grade, viscosity100 } from '@trochoid/compute/oil/fields.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import { highShearViscosity, viscosityAt100 } from '@trochoid/compute/oil/quantities.ts'
import { scale } from '../../islands/chart/scale.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Band = { name: string; least: number; most: number; highShear: number; own: boolean }
type Data = { bands: Band[]; poured: number | null; sump: number | null; printed: boolean }

const hot = ['20', '30', '40', '50', '60'] as const
/** The hot number of a grade as written: `10W-40` ends in 40. */
const hotPart = (of: string): string | undefined => /(\d+)$/.exec(of)?.[1]

function from({ sheet, point }: Build): Data {
  const of = valueAt(sheet, grade)
  const own = of === null ? undefined : hotPart(of)
  const bands = hot.map((name): Band => ({ name: name === own ? of! : name, ...gradeLimits({ grade: name === own ? of! : name }), own: name === own }))
  return { bands, poured: valueAt(sheet, viscosity100) ?? bands.find((b) => b.own)?.least ?? null, sump: point['oil.sumpViscosity100'] ?? null, printed: valueAt(sheet, viscosity100) !== null }
}

const top = 44, step = 58

export default figure<Data>({
  title: 'What each hot number promises at 100 °C',
  from,
  summary({ bands, poured, sump, printed }, system) {
    const nu = shown(viscosityAt100, system), eta = shown(highShearViscosity, system)
    const own = bands.find((b) => b.own)
    const here = own ? ` ${own.name} may lie from ${nu.say(own.least)} to just under ${nu.say(own.most)} and must keep ${eta.say(own.highShear)} in a fast film at 150 °C.` : ''
    const oil = poured === null ? '' : ` The full line is the oil as poured, ${nu.say(poured)}${printed ? ' by its data sheet' : ', taken at the thin edge because only the grade is known'}.`
    return `Each bar is a grade of SAE J300; the figure at its end is the least high-shear viscosity.${here}${oil}${sump === null ? '' : ` The broken line is what is in the sump, fuel included: ${nu.say(sump)}.`}`
  },
  Picture({ data: { bands, poured, sump }, system }) {
    const nu = shown(viscosityAt100, system), eta = shown(highShearViscosity, system)
    const x = scale([nu.of(5e-6), nu.of(27e-6)], [66, 520], 6)
    const bottom = top + bands.length * step
    const place = (v: number): number => round(x.at(Math.min(Math.max(nu.of(v), nu.of(5e-6)), nu.of(27e-6))))
    return (
      <Sheet says="Bars of viscosity at 100 °C for five grades, with the oil of this build marked." height={bottom + 54}>
        <text class="strong" x="0" y="16">Hot grade</text>
        <text class="strong" x="640" y="16" text-anchor="end">{eta.head('High shear, least')}</text>
        {x.ticks.map((t) => <g key={t}><line class="grid" x1={round(x.at(t))} x2={round(x.at(t))} y1={top - 12} y2={bottom} /><text x={round(x.at(t))} y={bottom + 20} text-anchor="middle">{t}</text></g>)}
        {bands.map((b, i) => (
          <g key={b.name}>
            <text class={b.own ? 'strong' : undefined} x="0" y={top + i * step + 22}>{b.name}</text>
            <rect class={b.own ? 'fill-accent' : 'area'} opacity={b.own ? 0.55 : undefined} x={place(b.least)} width={round(place(b.most) - place(b.least))} y={top + i * step} height="32" />
            <text x="640" y={top + i * step + 22} text-anchor="end">{eta.say(b.highShear)}</text>
          </g>
        ))}
        {poured !== null && <g><line class="line" x1={place(poured)} x2={place(poured)} y1={top - 12} y2={bottom} /><Words x={place(poured) + 6} y={top - 14}>poured</Words></g>}
        {sump !== null && <g><line class="line two" stroke-dasharray="5 4" x1={place(sump)} x2={place(sump)} y1={top - 12} y2={bottom} /><Words x={place(sump) - 6} y={top - 14} anchor="end">sump</Words></g>}
        <text class="strong" x="520" y={bottom + 46} text-anchor="end">{nu.head()}</text>
      </Sheet>
    )
  },
  table({ bands }, system) {
    const nu = shown(viscosityAt100, system), eta = shown(highShearViscosity, system)
    return { head: ['Grade', nu.head('From'), nu.head('To just under'), eta.head()], rows: bands.map((b) => [b.name, nu.say(b.least), nu.say(b.most), eta.say(b.highShear)]) }
  },
})
