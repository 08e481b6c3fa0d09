import manifoldExpansion from '@trochoid/compute/boost/manifoldExpansion.calc.ts'
import { hotGrowth, hotMaterial, metalTemperature } from '@trochoid/compute/boost/quantities.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { asked } from './asked.ts'
import { steps } from './plot/Curves.tsx'
import { lineFigure } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

/** What the sheet names comes first, then the two that differ most. */
const beside = ['stainless-304', 'stainless-309', 'ferritic-409'] as const
const hottest = degC(900)

export default lineFigure({
  title: 'How much a pipe grows',
  says: 'Growth of a pipe over its temperature for the material of the sheet and for others.',
  x: metalTemperature, y: hotGrowth, named: { y: 'Growth' },
  from(build) {
    const { given, at } = asked(manifoldExpansion, build)
    const own = given('material') as unknown as keyof typeof hotMaterial.choices
    const grades = [...new Set([own, ...beside])].slice(0, 3)
    const x = steps(given('cold'), hottest, 12)
    const growth = (material: string, hot: number): number | null => at({ material, hot })?.['growth'] ?? null
    return { x, length: given('length'), hot: given('hot'), here: growth(own, given('hot')), lines: grades.map((material) => ({ name: `${hotMaterial.choices[material].replace('stainless steel, type ', 'Type ')}${material === own ? ', as the sheet says' : ''}`, y: x.map((hot) => growth(material, hot)) })) }
  },
  summary({ hot, here, lines, x }, system) {
    const g = shown(hotGrowth, system), t = shown(metalTemperature, system)
    const last = lines.map(({ name, y }) => `${name.toLowerCase()} ${g.say(y.at(-1)!)}`).join(', ')
    return `The calculator’s pipe ${here === null ? '' : `grows by ${g.say(here)} at ${t.say(hot)}; `}at ${t.say(x.at(-1)!)}: ${last}. A mean coefficient to 650 °C is taken throughout, a little too much below and a little too little above.`
  },
  without: 'The pipe could not be worked out, so nothing is drawn.',
})
