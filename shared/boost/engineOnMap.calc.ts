import { calculation, NoAnswer, optional } from '../calculation/calculation.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { at } from './point.ts'
import { compressorMapOf, topSpeed } from './fields.ts'
import { actualSpeed } from './actualSpeed.ts'
import { chokeMargin } from './chokeMargin.ts'
import { compressorAt } from './compressorAt.ts'
import { correctedSpeed } from './correctedSpeed.ts'
import { overLowestLine } from './overLowestLine.ts'
import { speedMargin } from './speedMargin.ts'
import { surgeMargin } from './surgeMargin.ts'
import { topLineSpeed } from './topLineSpeed.ts'

export default calculation({
  id: 'engine-on-map', title: 'The engine on the compressor map', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', cautions: ['rotating-burst', 'model-only'],
  asks: 'How far is this point from surge, from choke and from the highest turbocharger speed?',
  in: {
    map: compressorMapOf, topSpeed: optional(topSpeed), temperature: siteAirTemperature, flow: at.correctedFlow, ratio: at.pressureRatio, speed: at.compressorSpeed,
  },
  out: {
    surgeMargin: at.surgeMargin, chokeMargin: at.chokeMargin, topSpeedShare: at.topSpeedShare, overLowest: at.overLowestLine,
    surgeFlow: at.surgeFlow, chokeFlow: at.chokeFlow, correctedSpeed: at.correctedSpeed, speedLimit: at.speedLimit,
  },
  curve: ['flow', 'surgeMargin'],
  answer({ map, topSpeed: limit, temperature, flow, ratio, speed }) {
    const { referenceTemperature } = map
    const place = compressorAt({ map, flow, ratio })
    const { surgeFlow, chokeFlow, outside } = place
    if (outside === 1) throw new NoAnswer('surge', 'This point lies left of the surge line: the compressor cannot hold it.')
    if (outside === 2) throw new NoAnswer('choke', 'This point lies right of the choke line: the compressor cannot pass that flow.')
    if (outside === 3) throw new NoAnswer('compressor-overspeed', 'This point lies above the top speed line of the map: nothing is known there.')
    const speedLimit = limit ?? actualSpeed({ corrected: topLineSpeed({ map }), temperature, referenceTemperature })
    return {
      surgeMargin: surgeMargin({ flow, surgeFlow }), chokeMargin: chokeMargin({ flow, chokeFlow }), topSpeedShare: speedMargin({ speed, limit: speedLimit }),
      overLowest: overLowestLine({ map, speed: place.speed }), surgeFlow, chokeFlow, correctedSpeed: correctedSpeed({ speed, temperature, referenceTemperature }), speedLimit,
    }
  },
  says: ({ overLowest }) => overLowest < 1
    ? 'At {overLowest} of the speed of the lowest line the map is an estimate: about {surgeMargin} more flow than at surge, {chokeMargin} short of choke.'
    : 'At a ratio of {ratio} the compressor passes {surgeMargin} more than at surge and could pass {chokeMargin} more before the right edge. Its shaft turns at {topSpeedShare} of what is permitted.',
  leavesOut: 'Pulsing flow, which makes a compressor surge earlier; bends before the compressor; the map’s own errors.',
})
