import { hotMaterial, metalTemperature } from '@trochoid/compute/boost/quantities.ts'
import { ruptureStress, ruptureTemperatures } from '@trochoid/compute/boost/ruptureTable.ts'
import { discStress } from '@trochoid/compute/driveline/quantities.ts'
import { role } from '@trochoid/compute/quantity/quantity.ts'
import { lineFigure } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

const grades = Object.keys(ruptureStress) as (keyof typeof ruptureStress)[]
const stress = role(discStress, 'σ_r', 'Stress that breaks it after 1,000 h')
const short = (grade: keyof typeof ruptureStress): string => hotMaterial.choices[grade].replace('stainless steel, type ', 'Type ')

export default lineFigure({
  title: 'Strength that is left in heat',
  says: 'Stress for rupture in a thousand hours over temperature, for four stainless steels, on a scale of decades.',
  x: metalTemperature, y: stress, log: true,
  from: () => ({ x: ruptureTemperatures, lines: grades.map((grade) => ({ name: short(grade), y: ruptureStress[grade] })) }),
  summary(_, system) {
    const t = shown(metalTemperature, system), s = shown(stress, system)
    const told = (['stainless-304', 'stainless-310', 'ferritic-430'] as const).map((grade) => `${short(grade).toLowerCase()} from ${s.say(ruptureStress[grade][0]!, 2)} to ${s.say(ruptureStress[grade][2]!, 2)}`)
    return `Between ${t.say(ruptureTemperatures[0])} and ${t.say(ruptureTemperatures[2])} what breaks the metal after a thousand hours falls: ${told.join(', ')}. Three published points for each, joined by straight lines; the scale is one of decades.`
  },
  without: 'There is nothing to draw.',
})
