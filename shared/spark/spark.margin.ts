import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { alternator, fans, pulley, resistance, voltage, wantedCurrent } from './fields.ts'

const shared = { theme: 'spark', article: 'spark-at-speed', must: 'stay below', as: 'share' } as const

export default [
  margin({
    ...shared,
    id: 'coil-charge-time',
    title: 'Coil charge time',
    over: 'sweep',
    demand: at.chargeTime,
    capacity: at.chargeWindow,
    tight: 0.2,
    rests: [wantedCurrent, resistance],
    remedies: [
      { field: wantedCurrent, move: 'down', says: 'Ask less current of the coil' },
      { field: voltage, move: 'up', says: 'Bring more of the battery’s voltage to the coil: wire, earth, relay' },
      { field: resistance, move: 'down', says: 'Cut resistance in the coil’s circuit' },
    ],
    says: 'At {speed} a coil needs {demand} of the {capacity} there is between sparks: {margin}.',
    settle: 'The current of one coil on an oscilloscope with a current clamp, at the voltage it sees when hot.',
  }),
  margin({
    ...shared,
    id: 'charging-budget-idle',
    title: 'Charging budget at hot idle',
    over: 'idle',
    demand: at.load,
    capacity: at.supply,
    tight: 0.1,
    rests: [alternator],
    remedies: [
      { field: pulley, move: 'up', says: 'Turn the alternator faster: a smaller pulley on it' },
      { field: fans, move: 'down', says: 'Control the fans by need' },
    ],
    says: 'At hot idle all loads ask {demand} and the alternator gives {capacity}: {margin}.',
    settle: 'A current clamp on the battery lead at hot idle with everything on: current out of the battery is the shortfall.',
  }),
]
