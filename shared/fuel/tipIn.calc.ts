import { calculation, free } from '../calculation/calculation.ts'
import { engineRotors } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { at as engine } from '../engine/point.ts'
import { ductArea, ductLength } from '../engine/quantities.ts'
import { cm2, mm } from '../quantity/si.ts'
import { airSpeedInDuctOf } from './airSpeedInDuctOf.ts'
import { arrivalDelayOf } from './arrivalDelayOf.ts'
import { airSpeedInDuct, arrivalDelay, turnsLate } from './quantities.ts'
import { turnsLateOf } from './turnsLateOf.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'tip-in',
  title: 'Tip-in: how late secondary fuel arrives',
  theme: 'fuel',
  asks: 'When the secondaries come in, how many charges go by before their fuel reaches the port?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['fuel-vapour', 'knock', 'model-only'],
  in: {
    distance: free(ductLength, mm(350), 'Way from secondary to port'), area: free(ductArea, cm2(18), 'Area of the duct of one rotor'), air: engine.air, rotors: engineRotors,
    manifold: engine.manifold, temperature: engine.charge, speed: engine.speed,
  },
  out: { airSpeed: airSpeedInDuct, delay: arrivalDelay, turns: turnsLate },
  curve: ['distance', 'delay'],
  answer({ distance, area, air, rotors, manifold, temperature, speed }) {
    const airSpeed = airSpeedInDuctOf({ air, rotors, density: gasDensity({ pressure: manifold, temperature }), area })
    const delay = arrivalDelayOf({ distance, speed: airSpeed })
    return { airSpeed, delay, turns: turnsLateOf({ delay, turn: turnTimeOf({ speed }) }) }
  },
  says: ({ turns }) => turns > 1
    ? 'The air runs at {airSpeed}, so fuel injected {distance} upstream arrives {delay} later at the earliest: {turns} charges of each rotor go by without it, while the primaries have already stepped down. They have to hold on for that long.'
    : 'The air runs at {airSpeed}, so fuel injected {distance} upstream arrives {delay} later at the earliest: within one charge of each rotor.',
  leavesOut: 'Drops that lag the air and the film on the wall, which add to it; the humidity of the air.',
})
