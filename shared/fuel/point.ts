import { pointValue } from '../build/pointValue.ts'
import { dutyCycle, fuelPerCharge, nozzleDrop, pulseWidth, railPressure } from './quantities.ts'

/** What the coupled solve finds about fuel at one shaft speed. */
export const at = {
  railPressure: pointValue('fuel.railPressure', railPressure),
  drop: pointValue('fuel.nozzleDrop', nozzleDrop),
  fuelPerCharge: pointValue('fuel.fuelPerCharge', fuelPerCharge),
  primaryPulse: pointValue('fuel.primaryPulse', pulseWidth),
  primaryDuty: pointValue('fuel.primaryDuty', dutyCycle),
} as const
