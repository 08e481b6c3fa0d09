import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { hotPressure, hotPressureSpeed, relief } from '@trochoid/compute/oil/fields.ts'
import { oilPressure } from '@trochoid/compute/oil/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Lines, long, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet, Words } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; gallery: number; asked: number }
type Data = { all: Here[]; relief: number | null; reading: { speed: number; pressure: number } | null }

function from({ sheet, solved }: Build): Data {
  const all = [solved.idle, ...solved.points].flatMap(({ speed, values }): Here[] => {
    const gallery = values['oil.gaugePressure'], asked = values['oil.shaftPressureAsked']
    return gallery === undefined || asked === undefined ? [] : [{ speed, gallery, asked }]
  })
  const pressure = valueAt(sheet, hotPressure), speed = valueAt(sheet, hotPressureSpeed)
  return { all, relief: valueAt(sheet, relief), reading: pressure === null || speed === null ? null : { speed, pressure } }
}

export default figure<Data>({
  title: 'What the gauge shows and what the shaft asks',
  from,
  summary({ all, relief: setting, reading }, system) {
    const p = shown(oilPressure, system), s = shown(shaftSpeed, system)
    const first = all[0], last = all.at(-1)
    if (!first || !last) return 'This build has no solved point, so nothing is drawn.'
    const level = reading ? `What the gaps pass is that of one hot reading, ${p.say(reading.pressure)} at ${s.say(reading.speed)}.` : 'No hot reading is known: what the gaps pass is an estimate from clearances and pump.'
    const most = Math.max(...all.map((h) => h.gallery))
    const under = reading && setting !== null && most < 0.97 * setting ? ` The level part stays below the relief setting on the sheet, ${p.say(setting)}: either the valve opens earlier, or the engine takes more oil than was reckoned. One reading cannot tell which; a second at high speed does.` : ''
    return `${level} From ${p.say(first.gallery)} at idle the gallery rises until the relief valve opens, then stays level. What the turning shaft asks rises with the square of speed, to ${p.say(last.asked)} at ${s.say(last.speed)}. The distance between the two is what is left to feed the rotor bearings.${under}`
  },
  Picture({ data: { all, relief: setting, reading }, system }) {
    if (all.length < 2) return null
    const p = shown(oilPressure, system), s = shown(shaftSpeed, system)
    const over = (of: 'gallery' | 'asked'): Spot[] => all.map((h) => [s.of(h.speed), p.of(h[of])])
    const last = s.of(all.at(-1)!.speed)
    const on = frame({ x: [0, last], y: [0, p.of(Math.max(setting ?? 0, ...all.map((h) => h.gallery)))] })
    const lines: Named[] = [{ name: 'Gallery, hot', class: 'line', spots: over('gallery') }, { name: 'Asked by the shaft', class: 'line two', dash: long, spots: over('asked') }]
    const valve = setting === null ? [] : [{ name: 'Relief setting', class: 'line dash', spots: [[0, p.of(setting)], [last, p.of(setting)]] as Spot[] }]
    return (
      <Sheet says="Oil pressure in the gallery, relief setting and the pressure the turning shaft asks, over shaft speed." height={on.height} named={[...lines, ...valve]}>
        <Axes on={on} x={s.head()} y={p.head()} />
        <g opacity=".6"><Lines on={on} of={valve} /></g>
        <Lines on={on} of={lines} />
        {reading && <circle class="mark" r="6" cx={on.x.at(s.of(reading.speed))} cy={on.y.at(p.of(reading.pressure))} />}
        {reading && <Words x={on.x.at(s.of(reading.speed))} y={on.y.at(p.of(reading.pressure)) + 26} anchor="middle">the reading</Words>}
      </Sheet>
    )
  },
  table({ all }, system) {
    const p = shown(oilPressure, system), s = shown(shaftSpeed, system)
    return { head: [s.head(), p.head('Gallery'), p.head('Asked by the shaft')], rows: all.filter((_, i) => i % 5 === 0).map((h) => [writeNumber(s.of(h.speed)), writeNumber(p.of(h.gallery)), writeNumber(p.of(h.asked))]) }
  },
})
