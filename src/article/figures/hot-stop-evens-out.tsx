import hotStop from '@trochoid/compute/cooling/hotStop.calc.ts'
import { metalTemperatureOf } from '@trochoid/compute/cooling/quantities.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { asked } from './asked.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly boiling: number; readonly coolants: readonly number[]; readonly boils: readonly (number | null)[] }

/** Where metal and coolant meet after a stop, over how hot the metal was. */
export default lineFigure<Data>({
  title: 'Where metal and coolant meet after a stop without flow',
  says: 'Evened-out temperature after a hot stop over metal temperature, for two coolant temperatures, with the boiling point.',
  x: metalTemperatureOf, y: metalTemperatureOf, named: { x: 'Metal when the engine stops', y: 'Coolant and metal, evened out' }, zoom: true,
  from(build) {
    const { at } = asked(hotStop, build), boiling = at()?.['boiling']
    if (boiling === undefined) return null
    const x = steps(degC(100), degC(170), 14), coolants = [degC(90), degC(110)]
    const lines = coolants.map((coolant, i) => ({ name: i === 0 ? 'After an easy lap' : 'Straight off a hot one', y: x.map((metal) => at({ metal, coolant })?.['even'] ?? null) }))
    return { x, boiling, coolants, lines, boils: lines.map(({ y }) => x[y.findIndex((t) => t !== null && t > boiling)] ?? null), levels: [{ says: 'boils under its cap', at: boiling, left: true }] }
  },
  summary({ boiling, coolants, boils }, system) {
    const t = shown(metalTemperatureOf, system)
    const says = coolants.map((coolant, i) => `With coolant at ${t.say(coolant)} ${boils[i] === null ? 'no metal drawn here makes it boil' : `metal of about ${t.say(boils[i]!)} makes it boil`}.`)
    return `Under its cap this build’s coolant boils at ${t.say(boiling)}. ${says.join(' ')} Hot spots boil sooner.`
  },
  without: 'The boiling point of this build’s coolant is not known, so nothing is drawn.',
})
