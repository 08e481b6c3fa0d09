import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import powerFromFuel from '@trochoid/compute/engine/powerFromFuel.calc.ts'
import { lambda, shaftSpeed, specificConsumption } from '@trochoid/compute/engine/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly now: number; readonly speed: number; readonly one: number }

/** Fuel for each unit of work over lambda, air and everything else held. */
export default lineFigure<Data>({
  title: 'Fuel for each unit of work over lambda',
  says: 'Specific consumption over lambda at the point of greatest power and at half its speed.',
  x: lambda, y: specificConsumption, named: { x: 'Lambda' },
  from({ sheet, solved: { points }, point }) {
    const of: AnyCalculation = powerFromFuel
    const speed = point['engine.speed'], here = point['engine.lambda']
    if (speed === undefined || here === undefined || point['engine.power'] === undefined) return null
    const half = points.reduce((a, p) => (Math.abs(p.speed - speed / 2) < Math.abs(a.speed - speed / 2) ? p : a), points[0]!)
    const at = (values: Readonly<Record<string, number>>, ratio: number): number | null => answered(of, { ...valuesFor(of, sheet, values), lambda: ratio }, 'consumption')
    const now = at(point, here), one = at(point, 1)
    if (now === null || one === null) return null
    const x = steps(0.7, 1.05, 14)
    return { here, now, speed, one, x, lines: [{ name: 'At greatest power', y: x.map((l) => at(point, l)) }, { name: 'Near half that speed', y: x.map((l) => at(half.values, l)) }], marks: [{ says: 'as set', x: here, y: now }] }
  },
  summary({ here, now, speed, one }, system) {
    const b = shown(specificConsumption, system), l = shown(lambda, system)
    return `At ${shown(shaftSpeed, system).say(speed)} and lambda ${l.say(here)} the build uses ${b.say(now)}; at lambda 1 it would be ${b.say(one)}, on paper only, because at this load the mixture is rich to keep the engine alive. Rich of 1 the work hardly changes in this model and the fuel does, so the line falls as one over lambda.`
  },
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
