import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { boostTargetCurve, controlShare, diaphragmAreaOf, firstMovement, fullTravel, wastegateDiameter } from './fields.ts'

export default [
  margin({
    id: 'actuator-holds', title: 'Actuator keeps the wastegate shut', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
    demand: at.asked, capacity: at.actuatorHeld, must: 'stay below', as: 'difference', tight: 10e3, rests: [firstMovement, diaphragmAreaOf],
    remedies: [
      { field: firstMovement, move: 'up', says: 'A stiffer spring or more preload.' },
      { field: controlShare, move: 'up', says: 'A control valve that keeps more of the boost from the actuator, or a second port.' },
      { field: boostTargetCurve, move: 'down', says: 'Less boost.' },
    ],
    says: 'At {speed} boost is {demand}; against the exhaust pressure of that point the actuator can keep the wastegate shut up to {capacity}: {margin}.',
    settle: 'Pump the actuator up on the bench, rod connected, and note the pressure of first movement.',
  }),
  margin({
    id: 'actuator-opens', title: 'Actuator opens the wastegate far enough', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
    demand: at.actuatorOpens, capacity: at.asked, must: 'stay below', as: 'difference', tight: 10e3, rests: [fullTravel, firstMovement, diaphragmAreaOf],
    remedies: [
      { field: fullTravel, move: 'down', says: 'A softer spring with the same preload.' },
      { field: firstMovement, move: 'down', says: 'Less preload, and a control valve that keeps the wastegate shut for longer.' },
      { field: wastegateDiameter, move: 'up', says: 'A larger valve, which exhaust pressure helps to open and which need not open as far.' },
    ],
    says: 'At {speed} the actuator needs {demand} to open the wastegate far enough and has {capacity}: {margin}. What is short here is boost above target.',
    settle: 'Pump the actuator up on the bench, rod connected, and note the pressures of first movement and of full travel.',
  }),
]
