import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { dilutionAfter } from '@trochoid/compute/oil/dilutionAfter.ts'
import { driveRateOf } from '@trochoid/compute/oil/driveRateOf.ts'
import { massOfOil } from '@trochoid/compute/oil/massOfOil.ts'
import oilChange from '@trochoid/compute/oil/oilChange.calc.ts'
import { dilution, runningTime } from '@trochoid/compute/oil/quantities.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly limit: number; readonly ends: readonly [number, number] }

/** Fuel in the oil over running hours: as entered, with half the inflow, and with hotter running that drives off twice as much. */
export default lineFigure<Data>({
  title: 'Fuel in the oil over hours',
  says: 'Fuel in the oil over running hours for three ways of running, with the limit.',
  x: runningTime, y: dilution,
  from({ sheet, point }) {
    const g = valuesFor(oilChange, sheet, point) as Readonly<Record<string, number>>
    const hourly = g['hourly']!, inflow = g['inflow']!, limit = g['limit']!
    const mass = massOfOil({ volume: g['volume']!, density: g['density15']! })
    const share = (flow: number, off: number) => (time: number): number => dilutionAfter({ inflow: flow, mass, driven: driveRateOf({ hourly: off }), time })
    const x = steps(0, 40 * 3600, 20)
    const entered = share(inflow, hourly), hotter = share(inflow, Math.min(0.9, 2 * hourly))
    return { limit, ends: [entered(x.at(-1)!), hotter(x.at(-1)!)], x, lines: [{ name: 'As entered', y: x.map(entered) }, { name: 'Twice as much driven off', y: x.map(hotter) }, { name: 'Half the inflow', y: x.map(share(inflow / 2, hourly)) }], levels: [{ says: 'limit', at: limit }] }
  },
  summary: ({ limit, ends }, system) => `Fuel gets in at a steady rate and hot oil gives a share of it off each hour, so it settles: near ${shown(dilution, system).say(ends[0])} as entered, near ${shown(dilution, system).say(ends[1])} if hotter running drives off twice as much. The limit chosen is ${shown(dilution, system).say(limit)}. Both rates are guesses until two samples of your own replace them.`,
  without: 'The oil of this build could not be worked out, so nothing is drawn.',
})
