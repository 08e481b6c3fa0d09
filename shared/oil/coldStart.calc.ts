import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { coldViscosity } from './coldViscosity.ts'
import { density15, grade } from './fields.ts'
import { gradeCranking } from './gradeCranking.ts'
import { gradePumping } from './gradePumping.ts'
import { kinematicFromDynamic } from './kinematicFromDynamic.ts'
import { lineOfDataSheet } from './lineOfDataSheet.ts'
import { lineTemperature } from './lineTemperature.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { at } from './point.ts'
import { crankingTemperature, oilTemperature, pumpingViscosity, startReserve } from './quantities.ts'
import { waltherViscosity } from './waltherViscosity.ts'
import { warmerThan } from './warmerThan.ts'

export default calculation({
  id: 'cold-start', title: 'Cold start: cranking and pumping', theme: 'oil',
  asks: 'Down to which temperature does this grade promise to be cranked and pumped, and how thick is the oil this morning?',
  article: 'grade-temperature-and-clearance', cautions: ['model-only'],
  in: { grade, viscosity40: at.viscosity40, viscosity100: at.viscosity100, density15, start: free(oilTemperature, degC(-10), 'Oil temperature at the start') },
  out: {
    cranks: role(crankingTemperature, 'T_cc', 'Cranking promised down to'), cranking: role(startReserve, 'ΔT_c', 'Reserve to the cranking limit'), pumps: role(crankingTemperature, 'T_p', 'Pumping promised down to'),
    pumping: role(startReserve, 'ΔT_p', 'Reserve to the pumping limit'), viscosity: pumpingViscosity, byLine: role(oilTemperature, 'T_60', 'Where the oil’s line meets 60 Pa s'),
  },
  curve: ['start', 'viscosity'],
  answer({ grade, viscosity40, viscosity100, density15, start }) {
    const cranks = gradeCranking({ grade }).temperature
    const { temperature: pumps, most } = gradePumping({ grade })
    if (Number.isNaN(pumps)) throw new NoAnswer('oil grade', `${grade} has no winter number: it promises nothing in the cold. Ask for its figures by ASTM D5293 and D4684.`)
    if (!(viscosity100 < viscosity40)) throw new NoAnswer('oil', 'The oil is given as thicker at 100 °C than at 40 °C.')
    const line = lineOfDataSheet({ viscosity40, viscosity100 })
    return {
      cranks, cranking: warmerThan({ temperature: start, limit: cranks }), pumps, pumping: warmerThan({ temperature: start, limit: pumps }),
      viscosity: coldViscosity({ viscosity: waltherViscosity({ ...line, temperature: start }), density: oilDensityAt({ density15, temperature: start }) }),
      byLine: lineTemperature({ ...line, viscosity: kinematicFromDynamic({ viscosity: most, density: oilDensityAt({ density15, temperature: pumps }) }) }),
    }
  },
  says: ({ cranking, pumping }) => pumping < 0
    ? '{start} is below the {pumps} down to which {grade} promises to be pumped: it may starve the engine without a sound. Warm the oil, or take a lower winter number.'
    : cranking < 0
      ? '{start} is below the {cranks} down to which {grade} promises to be cranked; pumping is promised to {pumps}. By its line it has {viscosity}.'
      : '{grade} promises cranking down to {cranks} and pumping down to {pumps}: at {start} there is {cranking} in hand. By its line it has {viscosity}.',
  leavesOut: 'Near its limit an oil is thicker than its line: wax and thickeners gel. A slow cooling overnight is worse than a quick one; fuel in the oil makes it thinner and hides the grade.',
})
