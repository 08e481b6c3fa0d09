import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { idleManifoldPressure } from '@trochoid/compute/engine/fields.ts'
import { manifoldPressure, shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import premixOil from '@trochoid/compute/fuel/premixOil.calc.ts'
import { referenceDose } from '@trochoid/compute/oil/fields.ts'
import { sealDose } from '@trochoid/compute/oil/quantities.ts'
import sealOil from '@trochoid/compute/oil/sealOil.calc.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'
import { firstFull, stagesAt } from './staging.ts'

type Data = Drawn & { readonly speed: number; readonly top: number; readonly metered: number; readonly premixed: number }

/** Seal oil of each turn over manifold pressure at the lowest speed with full boost: the pump follows its lever, premix the fuel. */
export default lineFigure<Data>({
  title: 'Seal oil over load at one speed',
  says: 'Oil of each shaft turn over manifold pressure by metering pump, premix and both.',
  x: manifoldPressure, y: sealDose,
  from({ sheet, solved: { points } }) {
    const of: AnyCalculation = sealOil, oil: AnyCalculation = premixOil
    const point = firstFull(points)
    const top = point?.values['engine.manifoldPressure'], low = valueAt(sheet, idleManifoldPressure), full = point?.values['fuel.fuelPerCharge'], flow = point?.values['fuel.massFlow']
    if (!point || top === undefined || low === null || full === undefined || flow === undefined || top <= low) return null
    const stages = stagesAt(sheet, point)
    const x = steps(low, top, 24)
    const dose = (manifold: number, out: string): number | null => {
      const charge = stages(manifold)?.fuel
      if (charge === undefined) return null
      const premix = answered(oil, { ...valuesFor(oil, sheet, point.values), fuelFlow: (flow * charge) / full }, 'oil')
      return premix === null ? null : answered(of, { ...valuesFor(of, sheet, point.values), manifold, premixOil: premix }, out)
    }
    const metered = x.map((p) => dose(p, 'metered')), premixed = x.map((p) => dose(p, 'premixed'))
    if (metered.at(-1) == null || premixed.at(-1) == null) return null
    const reference = valueAt(sheet, referenceDose)
    return {
      x, speed: point.speed, top, metered: metered.at(-1)!, premixed: premixed.at(-1)!,
      lines: [{ name: 'Both', y: x.map((_, i) => (metered[i] == null || premixed[i] == null ? null : metered[i] + premixed[i])) }, { name: 'Premix alone', y: premixed }, { name: 'Metering pump alone', y: metered }],
      ...(reference !== null && { levels: [{ says: 'reference chosen', at: reference, left: true }] }),
    }
  },
  summary: ({ speed, top, metered, premixed }, system) =>
    `At ${shown(shaftSpeed, system).say(speed)}. The pump’s lever is full once the throttle is: above outside pressure its line is level, at ${shown(sealDose, system).say(metered)}. Premix goes on rising with the fuel, to ${shown(sealDose, system).say(premixed)} at ${shown(manifoldPressure, system).say(top)}. Below full throttle the fuel is worked out with full-throttle breathing, which overstates it the lighter the load.`,
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
