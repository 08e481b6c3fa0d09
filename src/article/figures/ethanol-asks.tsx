import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import fuelBlend from '@trochoid/compute/fuel/fuelBlend.calc.ts'
import { ethanolShare, fuelVolumeFlow } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly now: number; readonly e85: number; readonly pump: number | null }

/** Fuel volume at the greatest flow over ethanol share, the same air and lambda kept, beside what the pump gives. */
export default lineFigure<Data>({
  title: 'Fuel volume over ethanol share, air and lambda the same',
  says: 'Fuel volume flow over ethanol share with the same air and lambda, and the flow of the pump.',
  x: ethanolShare, y: fuelVolumeFlow,
  from({ sheet, point }) {
    const of: AnyCalculation = fuelBlend
    const flow = point['fuel.massFlow']
    if (flow === undefined || point['engine.power'] === undefined) return null
    const given = valuesFor(of, sheet, point), here = given['ethanolShare'] as number
    const ratio = answered(of, given, 'ratio')
    const at = (share: number): number | null => {
      const other = answered(of, { ...given, ethanolShare: share }, 'ratio')
      return ratio === null || other === null ? null : answered(of, { ...given, ethanolShare: share, massFlow: (flow * ratio) / other }, 'volumeFlow')
    }
    const now = at(here), e85 = at(0.85)
    if (now === null || e85 === null) return null
    const pump = point['fuel.pumpFlow'] ?? null, x = steps(0, 1, 20)
    return { here, now, e85, pump, x, lines: [{ name: 'Fuel asked', y: x.map(at) }], marks: [{ says: 'fuel entered', x: here, y: now, below: true as const }], ...(pump !== null && { levels: [{ says: 'pump gives', at: pump, left: true as const }] }) }
  },
  summary: ({ here, now, e85, pump }, system) => {
    const q = shown(fuelVolumeFlow, system)
    return `With ${shown(ethanolShare, system).say(here)} ethanol the engine takes ${q.say(now)}; with 85\u202f% it would take ${q.say(e85)} for the same air and lambda, ${Math.round(100 * (e85 / now - 1))}\u202f% more.${pump === null ? '' : ` The pump gives ${q.say(pump)} at this point.`} What changes when boost is raised because the fuel allows it comes on top.`
  },
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
