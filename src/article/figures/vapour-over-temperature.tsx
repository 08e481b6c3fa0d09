import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { siteAirPressure } from '@trochoid/compute/engine/fields.ts'
import { fuelTemperature, vapourPressure } from '@trochoid/compute/fuel/quantities.ts'
import { trueVapourPressure } from '@trochoid/compute/fuel/trueVapourPressure.ts'
import vapourMargin from '@trochoid/compute/fuel/vapourMargin.calc.ts'
import { degC, kPa } from '@trochoid/compute/quantity/si.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly reid: number; readonly soak: number | null; readonly at: number | null; readonly boils: number | null; readonly outside: number }

const winter = kPa(90)

/** The pressure at which fuel boils over its temperature, summer and winter fuel, with what the stopped rail holds and the air outside. */
export default lineFigure<Data>({
  title: 'Where the fuel boils',
  says: 'Vapour pressure over fuel temperature for two fuels, with the pressure held in the rail and outside air.',
  x: fuelTemperature, y: vapourPressure,
  from({ sheet, point }) {
    const given = valuesFor(vapourMargin, sheet, point)
    const reid = given['reid'] as number | null, soak = given['temperature'] as number | null, outside = valueAt(sheet, siteAirPressure)
    if (reid === null || outside === null) return null
    const x = steps(degC(10), degC(100), 18)
    const at = (fuel: number) => (temperature: number): number => trueVapourPressure({ reid: fuel, temperature })
    const y = x.map(at(reid)), over = y.findIndex((p) => p > outside)
    const held = point['fuel.heldPressure']
    return {
      reid, soak, at: soak === null ? null : at(reid)(soak), boils: over < 0 ? null : x[over]!, outside, x,
      lines: [{ name: 'Fuel as entered', y }, { name: `Winter fuel, 90 kPa`, y: x.map(at(winter)) }],
      levels: [{ says: 'air outside', at: outside, left: true as const }, ...(held === undefined ? [] : [{ says: 'held in the stopped rail', at: held, left: true as const }])],
      ...(soak !== null && { uprights: [{ says: 'hot stop', at: soak }] }),
    }
  },
  summary({ soak, at, boils, outside }, system) {
    const p = shown(vapourPressure, system), t = shown(fuelTemperature, system)
    return `${boils === null ? 'Up to the end of the drawing the fuel does not boil at outside pressure.' : `At outside pressure, ${p.say(outside)}, this fuel boils from about ${t.say(boils)} on: any place without pressure, such as the inlet of a pump, has that as its limit.`}${soak === null || at === null ? '' : ` After a hot stop at ${t.say(soak)} it takes ${p.say(at)} to keep it liquid.`} Beyond 60 °C the source ends and the lines are extrapolated.`
  },
  without: 'The vapour pressure of the fuel is not known in this build, so nothing is drawn.',
})
