import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { maxChargeTemperature } from '@trochoid/compute/boost/fields.ts'
import { gasTemperature } from '@trochoid/compute/boost/quantities.ts'
import { siteAirTemperature } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; before: number; after: number }
type Data = { all: Here[]; outside: number | null; limit: number | null }

const from = ({ sheet, solved }: Build): Data => ({
  outside: valueAt(sheet, siteAirTemperature), limit: valueAt(sheet, maxChargeTemperature),
  all: solved.points.flatMap(({ speed, values }): Here[] => {
    const before = values['boost.compressorOutletTemperature'], after = values['engine.chargeTemperature']
    return before === undefined || after === undefined ? [] : [{ speed, before, after }]
  }),
})

export default figure<Data>({
  title: 'The charge before and after its cooler',
  from,
  summary({ all, outside, limit }, system) {
    const t = shown(gasTemperature, system), s = shown(shaftSpeed, system), last = all.at(-1)
    if (!last) return 'This build has no full-throttle point with a compressor, so nothing is drawn.'
    return `${outside === null ? '' : `From air at ${t.say(outside)}. `}At ${s.say(last.speed)} the compressor sends out ${t.say(last.before)} and the cooler hands on ${t.say(last.after)}${limit === null ? '' : `, where ${t.say(limit)} is accepted`}. These are settled temperatures: in a short pull the core’s own mass keeps the charge cooler, after idling in traffic warmer.`
  },
  Picture({ data: { all, outside, limit }, system }) {
    if (all.length < 2) return null
    const t = shown(gasTemperature, system), s = shown(shaftSpeed, system), over = (of: 'before' | 'after'): Spot[] => all.map((h) => [s.of(h.speed), t.of(h[of])])
    const ends = [s.of(all[0]!.speed), s.of(all.at(-1)!.speed)] as const
    return <Curves says="Charge temperature before and after the cooler over shaft speed, with the outside air and the limit." x={s.head()} y={t.head('Temperature')}
      lines={[{ name: 'After the compressor', class: 'line two', dash: long, spots: over('before') }, { name: 'after the cooler', class: 'line', spots: over('after') }]}
      levels={[...level('accepted', 'line dash', ends, limit === null ? null : t.of(limit)), ...level('air outside', 'thin', ends, outside === null ? null : t.of(outside))]} />
  },
  table({ all }, system) {
    const t = shown(gasTemperature, system), s = shown(shaftSpeed, system)
    return { head: [s.head(), t.head('After the compressor'), t.head('After the cooler')], rows: all.filter((_, i) => i % 4 === 0).map((h) => [writeNumber(s.of(h.speed)), writeNumber(t.of(h.before)), writeNumber(t.of(h.after))]) }
  },
})
