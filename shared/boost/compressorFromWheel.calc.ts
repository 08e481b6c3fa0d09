import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { percent, mm, rpm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { compressorEfficiency, exducer, gasFlow, inducer, pressureRatio, throatShare, tipMach, tipSpeed, trim, turboSpeed } from './quantities.ts'
import { tipMachOf } from './tipMachOf.ts'
import { tipSpeedOf } from './tipSpeedOf.ts'
import { wheelFlows } from './wheelFlows.ts'
import { wheelLine } from './wheelLine.ts'
import { wheelPlace } from './wheelPlace.ts'
import { wheelTrim } from './wheelTrim.ts'

export default calculation({
  id: 'compressor-from-wheel', title: 'Compressor estimated from its wheel', theme: 'turbo', article: 'reading-a-compressor-map', cautions: ['rotating-burst', 'model-only'],
  asks: 'What could a compressor with this wheel do, when no map is to be had?',
  in: {
    inducer: free(inducer, mm(58)), exducer: free(exducer, mm(77)), speed: free(turboSpeed, rpm(105000)), flow: free(gasFlow, 0.33, 'Flow through this compressor'), throat: free(throatShare, percent(53)),
    temperature: siteAirTemperature, pressure: siteAirPressure,
  },
  out: {
    ratio: pressureRatio, efficiency: compressorEfficiency, surge: role(gasFlow, 'm_s', 'Flow at surge, same speed'), right: role(gasFlow, 'm_k', 'Flow at the right edge, same speed'), trim, tip: tipSpeed, mach: tipMach,
  },
  curve: ['flow', 'ratio'],
  answer({ inducer: d1, exducer: d2, speed, flow, throat, temperature, pressure }) {
    if (!(d1 < d2)) throw new NoAnswer('compressor', 'The inducer, where air enters, is the smaller diameter of a wheel: these two look exchanged.')
    const tip = tipSpeedOf({ speed, diameter: d2 })
    const { surge, right } = wheelFlows({ inducer: d1, exducer: d2, throat, speed, temperature, pressure })
    const place = wheelPlace({ flow, surge, right })
    if (place < 0) throw new NoAnswer('surge', 'By this estimate the compressor would surge at this flow and speed.')
    if (place > 1) throw new NoAnswer('choke', 'By this estimate the compressor passes less than this flow at this speed.')
    return { ...wheelLine({ exducer: d2, speed, temperature, surge, right, place }), surge, right, trim: wheelTrim({ inducer: d1, exducer: d2 }), tip, mach: tipMachOf({ tipSpeed: tip, temperature }) }
  },
  says: () => 'A wheel of trim {trim} at a tip speed of {tip} would make a ratio near {ratio} at {efficiency}, between about {surge} and {right}. Take this as an estimate: flow within a tenth or two, pressure likewise, surge hardly at all. Ask for the map.',
  leavesOut: 'Blade angles, diffuser, housing, clearance and a ported shroud: all that tells one wheel of this size from another.',
})
