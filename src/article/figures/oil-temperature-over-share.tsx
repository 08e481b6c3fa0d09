import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { sustainedShareOf } from '@trochoid/compute/cooling/quantities.ts'
import oilTemperatureOf from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly share: number; readonly now: number; readonly limit: number; readonly hot: number }

/** Where the oil settles over the share of full load that is sustained, on a mild day and on one fifteen kelvin hotter. */
export default lineFigure<Data>({
  title: 'Where the oil settles over the load that lasts',
  says: 'Oil temperature over sustained share of full load on two days, with the limit.',
  x: sustainedShareOf, y: oilTemperature, zoom: true,
  from({ sheet, point }) {
    const of: AnyCalculation = oilTemperatureOf
    if (point['cooling.oilHeat'] === undefined || point['engine.power'] === undefined) return null
    const given = valuesFor(of, sheet, point)
    const share = given['share'] as number, limit = given['limit'] as number, air = given['air'] as number
    // Far above any oil's use the lines end: nobody drives there.
    const at = (x: number, change = {}): number | null => {
      const settles = answered(of, { ...given, share: x, ...change }, 'temperature')
      return settles !== null && settles > degC(170) ? null : settles
    }
    const now = at(share), hot = at(share, { air: air + 15 })
    if (now === null || hot === null) return null
    const x = steps(0.1, 0.9, 32)
    return {
      share, now, limit, hot, x,
      lines: [{ name: 'Air as entered', y: x.map((s) => at(s)) }, { name: 'Air 15 K warmer', y: x.map((s) => at(s, { air: air + 15 })) }, { name: 'Half the air through the cooler', y: x.map((s) => at(s, { airFlow: (given['airFlow'] as number) / 2 })) }],
      levels: [{ says: 'limit accepted', at: limit, left: true as const }], marks: [{ says: 'entered', x: share, y: now, below: true as const }],
    }
  },
  summary: ({ share, now, limit, hot }, system) => {
    const t = shown(oilTemperature, system)
    return `At ${shown(sustainedShareOf, system).say(share)} of full load, held, the oil settles at ${t.say(now)}; with air 15 K warmer at ${t.say(hot)}. The limit entered is ${t.say(limit)}. Below the bend the thermostat holds it. How long it takes to settle is not in these lines: a single lap never gets there.`
  },
  without: 'The oil’s heat in this build could not be worked out, so nothing is drawn.',
})
