import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { fuelTemperature, sessionTime } from '@trochoid/compute/fuel/quantities.ts'
import tankWarming from '@trochoid/compute/fuel/tankWarming.calc.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly end: number; readonly full: number; readonly low: number }

/** Fuel temperature in the tank over a session, with a full tank and with a low one. */
export default lineFigure<Data>({
  title: 'The return warms the tank',
  says: 'Fuel temperature in the tank over time, for the fuel as entered and for a quarter of it.',
  x: sessionTime, y: fuelTemperature, zoom: true,
  from({ sheet, point }) {
    const of: AnyCalculation = tankWarming
    if (point['fuel.pumpFlow'] === undefined || point['engine.power'] === undefined) return null
    const given = valuesFor(of, sheet, point)
    const at = (time: number, share = 1): number | null => answered(of, { ...given, time, volume: share * (given['volume'] as number) }, 'temperature')
    const x = steps(60, 60 * 60, 20), end = x.at(-1)!
    const full = at(end), low = at(end, 0.25)
    if (full === null || low === null) return null
    return { end, full, low, x, lines: [{ name: 'Fuel as entered', y: x.map((t) => at(t)) }, { name: 'A quarter of it left', y: x.map((t) => at(t, 0.25)) }] }
  },
  summary: ({ end, full, low }, system) => `After ${shown(sessionTime, system).say(end)} the fuel stands at ${shown(fuelTemperature, system).say(full)}; with a quarter of it, at ${shown(fuelTemperature, system).say(low)}. The same heat goes into less fuel as the tank empties. Pump current, heat from the rails and heat through the tank’s wall are those of the calculator named below.`,
  without: 'The pump of this build could not be worked out, so nothing is drawn.',
})
