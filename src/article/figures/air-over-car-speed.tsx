import coolantTemperature from '@trochoid/compute/cooling/coolantTemperature.calc.ts'
import coolingAir from '@trochoid/compute/cooling/coolingAir.calc.ts'
import { carSpeedOf, coolantTemperatureOf, ramRecoveryOf } from '@trochoid/compute/cooling/quantities.ts'
import { kmh } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked, over as each } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { speed: number; sheet: number; sealed: number; bare: number }
type Data = { all: Here[]; recovery: number; better: number; boiling: number | null; at: number }

function from(build: Build): Data {
  const air = asked(coolingAir, build), coolant = asked(coolantTemperature, build)
  const recovery = air.given('ramRecovery'), better = Math.min(0.9, recovery + 0.2)
  const settles = (over: Record<string, number>): number | undefined => {
    const x = air.at(over)
    return x ? coolant.at({ air: x['air']!, airTemperature: x['airTemperature']! })?.['temperature'] : undefined
  }
  const here = (carSpeed: number): Here | null => {
    const sheet = settles({ carSpeed }), sealed = settles({ carSpeed, ramRecovery: better }), bare = settles({ carSpeed, coverage: 0 })
    return sheet === undefined || sealed === undefined || bare === undefined ? null : { speed: carSpeed, sheet, sealed, bare }
  }
  return { all: each(steps(kmh(40), kmh(220), 12), here), recovery, better, boiling: build.point['cooling.boilingPoint'] ?? null, at: air.given('carSpeed') }
}

export default figure<Data>({
  title: 'Where the coolant settles, over the speed of the car',
  from,
  summary({ all, recovery, better, at }, system) {
    const v = shown(carSpeedOf, system), t = shown(coolantTemperatureOf, system), r = shown(ramRecoveryOf, system)
    const last = all.at(-1), first = all[0]
    if (!first || !last) return 'With these numbers the coolant does not settle at any speed drawn, so nothing is drawn.'
    return `The heat kept up is the same at all speeds; only the air differs. From ${v.say(first.speed)} to ${v.say(last.speed)} the coolant goes from ${t.say(first.sheet)} to ${t.say(last.sheet)} with the sheet’s recovery of ${r.say(recovery, 2)}. A sealed duct with a way out, taken as ${r.say(better, 2)}, gives ${t.say(first.sealed)} and ${t.say(last.sealed)}; the charge cooler moved out of the way ${t.say(first.bare)} and ${t.say(last.bare)}. This build is judged at ${v.say(at)}.`
  },
  Picture({ data: { all, boiling, at }, system }) {
    if (all.length < 2) return null
    const v = shown(carSpeedOf, system), t = shown(coolantTemperatureOf, system), spots = (of: 'sheet' | 'sealed' | 'bare'): Spot[] => all.map((h) => [v.of(h.speed), t.of(h[of])])
    return <Curves says="Coolant temperature over car speed for the duct of the sheet, a sealed one, and no charge cooler in front." x={v.head()} y={t.head('Coolant')}
      lines={[{ name: 'As on the sheet', class: 'line', spots: spots('sheet') }, { name: 'sealed duct', class: 'line two', dash: long, spots: spots('sealed') }, { name: 'nothing in front', class: 'line thin', spots: spots('bare') }]}
      levels={level('Bulk boils', 'line dash', [v.of(all[0]!.speed), v.of(all.at(-1)!.speed)], boiling === null ? null : t.of(boiling))}
      uprights={[{ at: v.of(at), says: 'judged here' }]} />
  },
  table({ all }, system) {
    const v = shown(carSpeedOf, system), t = shown(coolantTemperatureOf, system)
    return { head: [v.head(), t.head('As on the sheet'), t.head('Sealed duct'), t.head('Nothing in front')], rows: all.filter((_, i) => i % 2 === 0).map((h) => [writeNumber(v.of(h.speed)), ...[h.sheet, h.sealed, h.bare].map((x) => writeNumber(t.of(x)))]) }
  },
})
