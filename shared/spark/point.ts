import { pointValue } from '../build/pointValue.ts'
import { alternatorCurrent, chargeTime, chargeWindow, electricLoad } from './quantities.ts'

/** What spark and charging ask and have at one shaft speed. */
export const at = {
  chargeTime: pointValue('spark.chargeTime', chargeTime),
  chargeWindow: pointValue('spark.chargeWindow', chargeWindow),
  load: pointValue('spark.electricLoad', electricLoad, 'Current asked by all loads'),
  supply: pointValue('spark.electricSupply', alternatorCurrent, 'Current the alternator gives'),
} as const
