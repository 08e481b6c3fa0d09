import oilTemperatureOf from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { coolerAir } from '@trochoid/compute/oil/fields.ts'
import { oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { asked } from './asked.ts'
import { steps } from './plot/Curves.tsx'
import { lineFigure } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

const air = coolerAir.shape

/** Where the oil settles over the air that finds its way through the core, with as much oil again beside it. */
export default lineFigure({
  title: 'Where the oil settles over the air through its cooler',
  says: 'Oil temperature over air flow through the cooler, with the oil flow of the build and with twice as much.',
  x: air, y: oilTemperature, zoom: true,
  from(build) {
    if (build.point['cooling.oilHeat'] === undefined) return null
    const { given, at } = asked(oilTemperatureOf, build)
    const now = given('airFlow'), perTurn = given('perTurn')
    // The thermostat is left out: what the core can do is asked. Far above any oil's use the lines end.
    const settles = (airFlow: number, change = {}): number | null => {
      const t = at({ airFlow, opens: given('air'), ...change })?.['temperature']
      return t === undefined || t > degC(190) ? null : t
    }
    const here = settles(now), half = settles(now / 2), doubled = settles(now, { perTurn: 2 * perTurn })
    if (here === null) return null
    const x = steps(now / 4, now * 2, 28)
    return {
      here, half, doubled, now, x,
      lines: [{ name: 'Oil flow of this build', y: x.map((a) => settles(a)) }, { name: 'Twice the oil', y: x.map((a) => settles(a, { perTurn: 2 * perTurn })) }],
      marks: [{ says: 'entered', x: now, y: here }],
    }
  },
  summary({ here, half, doubled, now }, system) {
    const t = shown(oilTemperature, system)
    return `With ${shown(air, system).say(now)} of air, as entered, and all oil through the core it settles at ${t.say(here)} behind it${half === null ? '; with half the air it gets too hot to be drawn' : `; with half the air at ${t.say(half)}`}${doubled === null ? '' : `; with twice the oil instead at ${t.say(doubled)}`}. The thermostat is left out of these lines.`
  },
  without: 'The oil’s heat in this build could not be worked out, so nothing is drawn.',
})
