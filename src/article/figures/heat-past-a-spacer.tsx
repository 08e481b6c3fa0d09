import { jointHeat, spacerThickness } from '@trochoid/compute/cooling/quantities.ts'
import spacerConduction from '@trochoid/compute/cooling/spacerConduction.calc.ts'
import { mm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { thickness: number; through: number; steel: number; stainless: number; metal: number }
type Data = { all: Here[]; here: { thickness: number; heat: number } | null }

function from(build: Build): Data {
  const { given, at } = asked(spacerConduction, build)
  const of = (thickness: number): Here | null => {
    const steel = at({ thickness, boltMaterial: 'steel' }), stainless = at({ thickness, boltMaterial: 'stainless' }), metal = at({ thickness, material: 'aluminium', boltMaterial: 'steel' })
    return steel && stainless && metal ? { thickness, through: steel['through']!, steel: steel['heat']!, stainless: stainless['heat']!, metal: metal['heat']! } : null
  }
  const heat = at()?.['heat']
  return { all: each(steps(mm(3), mm(30), 18), of), here: heat === undefined ? null : { thickness: given('thickness'), heat } }
}

export default figure<Data>({
  title: 'Heat past a spacer, over its thickness',
  from,
  summary({ all, here }, system) {
    const first = all[0], last = all.at(-1)
    if (!first || !last || !here) return 'The spacer could not be worked out, so nothing is drawn.'
    const l = shown(spacerThickness, system), q = shown(jointHeat, system)
    return `With the areas and temperatures of the calculator beneath. At ${l.say(here.thickness)} of phenolic resin with steel bolts ${q.say(here.heat)} pass; with stainless bolts at ${l.say(last.thickness)} it is ${q.say(last.stainless)}. The lowest line is the resin alone: what lies above it goes by the bolts. A spacer of aluminium of the same thickness would pass ${q.say(first.metal)} at ${l.say(first.thickness)} and is left out, because it would not fit on the paper.`
  },
  Picture({ data: { all, here }, system }) {
    if (all.length < 2) return null
    const l = shown(spacerThickness, system), q = shown(jointHeat, system)
    const over = (of: 'through' | 'steel' | 'stainless'): Spot[] => all.map((x) => [l.of(x.thickness), q.of(x[of])])
    return <Curves says="Heat past a phenolic spacer over its thickness, with bolts of steel and of stainless steel, and through the resin alone." x={l.head()} y={q.head('Heat')} reach={[0]}
      lines={[{ name: 'With steel bolts', class: 'line', spots: over('steel') }, { name: 'With stainless bolts', class: 'line two', dash: long, spots: over('stainless') }, { name: 'Resin alone', class: 'line thin', spots: over('through') }]}
      marks={here ? [{ at: [l.of(here.thickness), q.of(here.heat)], says: 'the calculator’s spacer', to: 'above' }] : []} />
  },
  table({ all }, system) {
    const l = shown(spacerThickness, system), q = shown(jointHeat, system)
    return { head: [l.head(), q.head('Steel bolts'), q.head('Stainless bolts'), q.head('Resin alone'), q.head('Aluminium spacer')], rows: all.filter((_, i) => i % 3 === 0).map((x) => [writeNumber(l.of(x.thickness)), ...[x.steel, x.stainless, x.through, x.metal].map((v) => writeNumber(q.of(v)))]) }
  },
})
