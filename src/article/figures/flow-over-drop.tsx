import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import injectorFlowAtPressure from '@trochoid/compute/fuel/injectorFlowAtPressure.calc.ts'
import { fuelDensity, injectorFlow, nozzleDrop } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly rated: number; readonly at: number; readonly drop: number; readonly flow: number; readonly fluid: number; readonly fuel: number }

/** One primary over the pressure across it, with its rated fluid and with the fuel it gets. */
export default lineFigure<Data>({
  title: 'One injector over the pressure across it',
  says: 'Flow of a primary over pressure across the nozzle, for the rated fluid and for the fuel in the rail.',
  x: nozzleDrop, y: injectorFlow,
  from({ sheet, point }) {
    const of: AnyCalculation = injectorFlowAtPressure
    if (point['fuel.nozzleDrop'] === undefined) return null
    const given = valuesFor(of, sheet, point)
    const [rated, at, drop, fluid, fuel] = ['ratedFlow', 'ratedDrop', 'drop', 'ratedDensity', 'density'].map((n) => given[n] as number) as [number, number, number, number, number]
    const flow = answered(of, given, 'flow')
    if (flow === null) return null
    const over = (p: number, density: number): number | null => answered(of, { ...given, drop: p, density }, 'flow')
    const x = steps(1e5, Math.max(7e5, 1.2 * drop), 24)
    return {
      rated, at, drop, flow, fluid, fuel, x,
      lines: [{ name: 'Rated fluid', y: x.map((p) => over(p, fluid)) }, { name: 'Fuel in the rail', y: x.map((p) => over(p, fuel)) }],
      marks: [{ says: 'rated', x: at, y: rated }, { says: 'at work', x: drop, y: flow, below: true }],
    }
  },
  summary({ rated, at, drop, flow, fluid, fuel }, system) {
    const q = shown(injectorFlow, system), p = shown(nozzleDrop, system), d = shown(fuelDensity, system)
    return `Rated ${q.say(rated)} at ${p.say(at)} with a fluid of ${d.say(fluid)}. At work, with ${p.say(drop)} across it and fuel of ${d.say(fuel)}, it passes ${q.say(flow)} by volume. Flow goes with the square root: twice the pressure is about four tenths more, four times the pressure twice as much. A denser fuel passes less volume but more mass.`
  },
  without: 'The pressure across the injectors of this build could not be worked out, so nothing is drawn.',
})
