import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { lambda } from '@trochoid/compute/engine/quantities.ts'
import { fuelAtHandover } from '@trochoid/compute/fuel/fuelAtHandover.ts'
import { fuelLack } from '@trochoid/compute/fuel/fuelLack.ts'
import { lambdaOfFuelChange } from '@trochoid/compute/fuel/lambdaOfFuelChange.ts'
import { wallTime } from '@trochoid/compute/fuel/quantities.ts'
import wallFilm from '@trochoid/compute/fuel/wallFilm.calc.ts'
import { wallDelivered } from '@trochoid/compute/fuel/wallDelivered.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly wanted: number; readonly near: number; readonly far: number }

/** Lambda of the charges after a tip-in without enrichment, injectors near the port and upstream. */
export default lineFigure<Data>({
  title: 'Lambda after a tip-in without extra fuel',
  says: 'Lambda over time after the throttle opens, for injectors near the port and for one rail upstream.',
  x: wallTime, y: lambda, named: { x: 'Time after the throttle opens', y: 'Lambda' }, zoom: true,
  from({ sheet, point }) {
    if (point['fuel.fuelPerCharge'] === undefined || point['engine.power'] === undefined) return null
    const g = valuesFor(wallFilm, sheet, point) as Readonly<Record<string, number>>
    const fuel = (handover: number): number => fuelAtHandover({ fuel: g['fuel']!, manifold: g['full']!, handover, lambda: g['lambda']!, handoverLambda: g['wanted']! })
    const before = fuel(g['from']!), after = fuel(g['to']!), wanted = g['wanted']!
    const at = (wall: number, settling: number) => (time: number): number => lambdaOfFuelChange({ lambda: wanted, change: fuelLack({ arrives: wallDelivered({ before, after, wall, settling, time }), meant: after }) })
    const near = at(g['wall']!, g['settling']!), far = at(g['farWall']!, g['farSettling']!)
    const x = steps(0, 2, 40)
    return { wanted, near: near(0), far: far(0), x, lines: [{ name: 'Primaries near the port', y: x.map(near) }, { name: 'One rail upstream', y: x.map(far) }], levels: [{ says: 'meant', at: wanted }] }
  },
  summary: ({ wanted, near, far }, system) => `Lambda ${shown(lambda, system).say(wanted)} is meant. The first charge comes at ${shown(lambda, system).say(near)} from injectors near the port and at ${shown(lambda, system).say(far)} from a rail upstream, whose fuel also arrives late, which is not drawn. Shares and times of the film are common practice, no source.`,
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
