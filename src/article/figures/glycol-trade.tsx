import coolantMixture from '@trochoid/compute/cooling/coolantMixture.calc.ts'
import { coolantTemperatureOf, glycolVolume } from '@trochoid/compute/cooling/quantities.ts'
import { percent } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { glycol: number; carried: number; conducts: number; thickness: number }
type Data = { all: Here[]; sheet: Here | null; temperature: number }

function from(build: Build): Data {
  const { given, at } = asked(coolantMixture, build)
  const plain = at({ glycol: 0 })
  const here = (glycol: number): Here | null => {
    const x = at({ glycol })
    return x && plain && { glycol, carried: (x['density']! * x['specificHeat']!) / (plain['density']! * plain['specificHeat']!), conducts: x['conductivity']! / plain['conductivity']!, thickness: x['viscosity']! / plain['viscosity']! }
  }
  return { all: each(steps(0, percent(60), 12), here), sheet: here(given('glycol')), temperature: given('temperature') }
}

export default figure<Data>({
  title: 'What glycol takes from water',
  from,
  summary({ sheet, temperature }, system) {
    const g = shown(glycolVolume, system)
    const here = sheet ? ` With the sheet’s ${g.say(sheet.glycol, 2)} a litre carries ${writeNumber(sheet.carried, 2)} times the heat of a litre of water, conducts ${writeNumber(sheet.conducts, 2)} times as well, and is ${writeNumber(sheet.thickness, 2)} times as thick.` : ''
    return `At ${shown(coolantTemperatureOf, system).say(temperature)}, each against plain water.${here} All three lean the same way: less heat for each litre pumped, and a worse hold of it at the wall.`
  },
  Picture({ data: { all, sheet }, system }) {
    const g = shown(glycolVolume, system), over = (of: 'carried' | 'conducts'): Spot[] => all.map((h) => [g.of(h.glycol), h[of]])
    if (all.length < 2) return null
    return <Curves says="Heat carried by a litre and heat conducted, against water, over the share of glycol." x={g.head()} y="Against plain water" reach={[0]}
      lines={[{ name: 'Heat carried by a litre', class: 'line', spots: over('carried') }, { name: 'Conductivity', class: 'line two', dash: long, spots: over('conducts') }]}
      uprights={sheet ? [{ at: g.of(sheet.glycol), says: 'the sheet' }] : []} />
  },
  table({ all }, system) {
    const g = shown(glycolVolume, system)
    return { head: [g.head(), 'Heat carried by a litre', 'Conductivity', 'Thickness'], rows: all.map((h) => [writeNumber(g.of(h.glycol), 2), ...[h.carried, h.conducts, h.thickness].map((x) => writeNumber(x))]) }
  },
})
