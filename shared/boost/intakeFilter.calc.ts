import { calculation, free } from '../calculation/calculation.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { at as engine } from '../engine/point.ts'
import { cm2, kPa } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { faceAreaFor } from './faceAreaFor.ts'
import { faceSpeed } from './faceSpeed.ts'
import { filterLoss } from './filterLoss.ts'
import { filterArea, filterExponent, gasFlow, gasSpeed, pressureLoss } from './quantities.ts'

export default calculation({
  id: 'intake-filter-area', title: 'Area of the intake filter', theme: 'turbo', article: 'the-path-in', cautions: ['model-only'],
  asks: 'How large must the intake filter be?',
  in: {
    flow: engine.air, measured: free(pressureLoss, kPa(1.5), 'Pressure loss of one clean filter that was measured'), measuredFlow: free(gasFlow, 0.2, 'Flow at that reading'), area: free(filterArea, cm2(800), 'Area of that filter, pleats laid out or face, as you will compare'),
    accepted: free(pressureLoss, kPa(1.5), 'Pressure loss you accept'), exponent: free(filterExponent, 1.5), pressure: siteAirPressure, temperature: siteAirTemperature,
  },
  out: { needed: role(filterArea, 'A_f', 'Filter area needed'), loss: role(pressureLoss, 'Δp_f', 'Loss of the filter that was measured, at this flow'), speed: gasSpeed },
  curve: ['flow', 'needed'],
  answer({ flow, measured, measuredFlow, area, accepted, exponent, pressure, temperature }) {
    const needed = faceAreaFor({ area, flow, measuredFlow, measured, accepted, exponent })
    return { needed, loss: filterLoss({ flow, measuredFlow, measured, exponent }), speed: faceSpeed({ flow, density: gasDensity({ pressure, temperature }), area: needed }) }
  },
  says: () => '{flow} at a loss of {accepted} takes {needed} of this filter’s cloth; the one that was measured would cost {loss}. Every kilopascal before the compressor raises its pressure ratio, and with it speed and heat, for the same boost.',
  leavesOut: 'Dust, oil on the cloth, the housing around it, and how clean it keeps the engine.',
})
