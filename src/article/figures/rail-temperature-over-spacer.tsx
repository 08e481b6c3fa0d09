import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { heatFlow, spacerThickness } from '@trochoid/compute/cooling/quantities.ts'
import railHeat from '@trochoid/compute/fuel/railHeat.calc.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly here: number; readonly heat: number; readonly bolts: number; readonly metal: number | null }

/** Heat into the rail over the thickness of its spacers: plastic, aluminium, and plastic with bolts that pass no heat. */
export default lineFigure<Data>({
  title: 'Heat into the rail over the thickness of its spacers',
  says: 'Heat into the rail over spacer thickness for plastic and aluminium spacers and for plastic without the bolts.',
  x: spacerThickness, y: heatFlow,
  from({ sheet, point }) {
    const of: AnyCalculation = railHeat
    const given = valuesFor(of, sheet, point), here = given['thickness'] as number, other = given['other'] as number
    const through = (thickness: number, material: string, parts: readonly string[]): number | null => {
      const found = parts.map((part) => answered(of, { ...given, thickness, material }, part))
      return found.some((v) => v === null) ? null : found.reduce<number>((a, v) => a + v!, 0)
    }
    const both = ['spacers', 'bolts'] as const
    const heat = through(here, 'phenolic', both), bolts = through(here, 'phenolic', ['bolts'])
    if (heat === null || bolts === null) return null
    const x = steps(0.002, 0.02, 18)
    return {
      here, heat, bolts, metal: through(here, 'aluminium', both), x,
      lines: [{ name: 'Aluminium', y: x.map((t) => through(t, 'aluminium', both)) }, { name: 'Plastic', y: x.map((t) => through(t, 'phenolic', both)) }, { name: 'Plastic, bolts left out', y: x.map((t) => through(t, 'phenolic', ['spacers'])) }],
      levels: [{ says: 'air and radiation', at: other }],
    }
  },
  summary({ here, heat, bolts, metal }, system) {
    const q = shown(heatFlow, system)
    return `At ${shown(spacerThickness, system).say(here)} plastic spacers and their steel bolts pass ${q.say(heat)}, of which the bolts pass ${q.say(bolts)}.${metal === null ? '' : ` Aluminium spacers would pass ${q.say(metal)}.`} Past the first few millimetres the bolts carry nearly all, so a thicker spacer helps only by making them longer. The dotted line is the heat that air and radiation bring, an estimate of the card.`
  },
  without: 'The heat into the rail could not be worked out, so nothing is drawn.',
})
