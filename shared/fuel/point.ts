import { pointValue } from '../build/pointValue.ts'
import {
  closingTime, driverCurrent, dutyCycle, fuelDensity, fuelFlow, fuelPerCharge, fuelVolumeFlow, linePressureLoss, nozzleDrop, premixOilFlow, pulseWidth,
  pumpFlow, pumpPressure, railPressure, tankVolume, turnTime, vapourPressure,
} from './quantities.ts'

/** What is found about fuel at one shaft speed: the first two by the coupled solve, the others by the links that follow it. */
export const at = {
  fuelMassFlow: pointValue('fuel.massFlow', fuelFlow),
  fuelPerCharge: pointValue('fuel.fuelPerCharge', fuelPerCharge),
  density: pointValue('fuel.density', fuelDensity, 'Density of the fuel in the rail'),
  volumeFlow: pointValue('fuel.volumeFlow', fuelVolumeFlow, 'Fuel used'),
  pumpPressure: pointValue('fuel.pumpPressure', pumpPressure),
  pumpFlow: pointValue('fuel.pumpFlow', pumpFlow, 'Flow the pump gives'),
  bypassFlow: pointValue('fuel.bypassFlow', fuelVolumeFlow, 'Flow to be returned'),
  bypassCapacity: pointValue('fuel.bypassCapacity', fuelVolumeFlow, 'Flow the regulator and its return can pass'),
  feedLoss: pointValue('fuel.feedLoss', linePressureLoss, 'Pressure loss of the feed'),
  linkLoss: pointValue('fuel.linkLoss', linePressureLoss, 'Pressure loss between the rails'),
  railPressure: pointValue('fuel.railPressure', railPressure),
  drop: pointValue('fuel.nozzleDrop', nozzleDrop),
  lastInjectorDrop: pointValue('fuel.lastInjectorDrop', nozzleDrop, 'Pressure across the last nozzle'),
  turnTime: pointValue('fuel.turnTime', turnTime),
  primaryPulse: pointValue('fuel.primaryPulse', pulseWidth, 'Pulse of a primary'),
  primaryDuty: pointValue('fuel.primaryDuty', dutyCycle, 'Duty of a primary'),
  secondaryPulse: pointValue('fuel.secondaryPulse', pulseWidth, 'Pulse of a secondary'),
  secondaryDuty: pointValue('fuel.secondaryDuty', dutyCycle, 'Duty of a secondary'),
  worstDuty: pointValue('fuel.worstDuty', dutyCycle, 'Duty of the stage that is open longest'),
  closingTime: pointValue('fuel.closingTime', closingTime),
  secondaryPulseAtHandover: pointValue('fuel.secondaryPulseAtHandover', pulseWidth, 'Pulse of a secondary at hand-over'),
  primaryDutyAtHandover: pointValue('fuel.primaryDutyAtHandover', dutyCycle, 'Duty of the primaries alone just below hand-over'),
  vapourPressure: pointValue('fuel.vapourPressure', vapourPressure, 'Vapour pressure in the rail after a hot stop'),
  heldPressure: pointValue('fuel.heldPressure', vapourPressure, 'Absolute pressure held in the stopped rail'),
  driverCurrent: pointValue('fuel.driverCurrent', driverCurrent),
  sessionFuel: pointValue('fuel.sessionFuel', tankVolume, 'Fuel a session takes'),
  usableFuel: pointValue('fuel.usableFuel', tankVolume, 'Fuel that can be used from the tank'),
  premixOilFlow: pointValue('fuel.premixOilFlow', premixOilFlow),
} as const
