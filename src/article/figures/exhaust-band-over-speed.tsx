import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { exhaustBand } from '@trochoid/compute/cooling/fields.ts'
import { shareOfFuelOf } from '@trochoid/compute/cooling/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { exhaustGasTemperature } from '@trochoid/compute/media/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { frame } from './plot/frame.ts'
import { Band, Lines, type Named, type Spot } from './plot/Lines.tsx'
import { Axes, Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; low: number; middle: number; high: number }
type Data = { all: Here[]; limit: number | null; band: number }

function from({ sheet, solved, point }: Build): Data {
  return {
    all: solved.points.flatMap(({ speed, values }): Here[] => {
      const low = values['cooling.exhaustTemperatureLow'], middle = values['cooling.exhaustTemperature'], high = values['cooling.exhaustTemperatureHigh']
      return low === undefined || middle === undefined || high === undefined ? [] : [{ speed, low, middle, high }]
    }),
    limit: point['boost.hotSideTemperature'] ?? null, band: valueAt(sheet, exhaustBand) ?? 0,
  }
}

export default figure<Data>({
  title: 'Exhaust temperature at the port, as a band',
  from,
  summary({ all, limit, band }, system) {
    const hottest = all.reduce<Here | null>((a, h) => (h.high > (a?.high ?? 0) ? h : a), null)
    if (!hottest) return 'This build has no full-throttle points, so nothing is drawn.'
    const t = shown(exhaustGasTemperature, system), y = shown(shareOfFuelOf, system)
    const material = limit === null ? '' : ` The hot side is meant for ${t.say(limit)}${limit > hottest.high ? ', above all of the band.' : limit > hottest.low ? ', inside the band: one logged point decides.' : ', below all of the band.'}`
    return `With the exhaust’s heat known to ${y.say(band, 2)} of the fuel’s energy either way, the gas leaves at ${t.say(hottest.low)} to ${t.say(hottest.high)} at ${shown(shaftSpeed, system).say(hottest.speed)}.${material} At low speed the true line lies lower, because the walls then have longer to take heat; the model leaves that out.`
  },
  Picture({ data: { all, limit }, system }) {
    if (all.length < 2) return null
    const s = shown(shaftSpeed, system), t = shown(exhaustGasTemperature, system)
    const ends = [...all.flatMap((h) => [h.low, h.high]), ...(limit === null ? [] : [limit])].map((v) => t.of(v))
    const x = [s.of(all[0]!.speed), s.of(all.at(-1)!.speed)] as const
    const on = frame({ x, y: [Math.min(...ends), Math.max(...ends)] })
    const over = (of: 'low' | 'middle' | 'high'): Spot[] => all.map((h) => [s.of(h.speed), t.of(h[of])])
    const lines: Named[] = [{ name: 'Model', class: 'line', spots: over('middle') }]
    const stands: Named[] = limit === null ? [] : [{ name: 'What the hot side is meant for', class: 'line two dash', spots: [[x[0], t.of(limit)], [x[1], t.of(limit)]] }]
    return (
      <Sheet says="Exhaust temperature over shaft speed with its band, and the temperature the hot side is meant for." height={on.height} named={[...lines, ...stands]}>
        <Band on={on} low={over('low')} high={over('high')} />
        <Axes on={on} x={s.head()} y={t.head()} />
        <Lines on={on} of={[...lines, ...stands]} />
      </Sheet>
    )
  },
  table({ all }, system) {
    const s = shown(shaftSpeed, system), t = shown(exhaustGasTemperature, system)
    return { head: [s.head(), t.head('Low'), t.head('Model'), t.head('High')], rows: all.filter((_, i) => i % 5 === 0).map((h) => [writeNumber(s.of(h.speed)), ...[h.low, h.middle, h.high].map((v) => writeNumber(t.of(v)))]) }
  },
})
