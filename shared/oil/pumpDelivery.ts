import { shaftSpeed } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { oilFlow, oilPumpPerTurn, pumpEfficiency, pumpSpeedRatio } from './quantities.ts'

/** Flow of the oil pump at a speed. */
export const about = {
  name: 'Flow of the oil pump',
  in: { perTurn: oilPumpPerTurn, ratio: pumpSpeedRatio, speed: shaftSpeed, efficiency: pumpEfficiency },
  out: oilFlow,
  equation: 'perTurn * ratio * speed / (2 * pi) * efficiency',
  source: ['definition', 'displacement times speed times volumetric efficiency'],
  notes: 'With efficiency 1 this is the flow without slip. Cavitation at very high speed is left out.',
} as const satisfies About

export const pumpDelivery = formula<typeof about>('pump-delivery', {}, ({ perTurn, ratio, speed, efficiency }) => ((perTurn * ratio * speed) / (2 * Math.PI)) * efficiency)
