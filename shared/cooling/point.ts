import { pointValue } from '../build/pointValue.ts'
import { fuelPowerIn } from '../engine/quantities.ts'
import { enthalpyFlow, exhaustGasTemperature } from '../media/quantities.ts'
import { boilingPointOf, coolantFlowOf, coolantHeatOf, coolantTemperatureOf, coreAir, coreAirTemperatureOf, heatFlow } from './quantities.ts'

/** Where the heat goes at one shaft speed, and how warm the coolant gets there. */
export const at = {
  fuelPower: pointValue('cooling.fuelPower', fuelPowerIn),
  coolantHeat: pointValue('cooling.coolantHeat', coolantHeatOf),
  oilHeat: pointValue('cooling.oilHeat', heatFlow, 'Heat to the oil'),
  exhaustHeat: pointValue('cooling.exhaustHeat', heatFlow, 'Heat in the exhaust'),
  surfaceHeat: pointValue('cooling.surfaceHeat', heatFlow, 'Heat from the engine’s surfaces'),
  unburnedHeat: pointValue('cooling.unburnedHeat', heatFlow, 'Chemical power left unburned'),
  chargeCoolerHeat: pointValue('cooling.chargeCoolerHeat', heatFlow, 'Heat of the charge cooler'),
  airEnthalpy: pointValue('cooling.airEnthalpy', enthalpyFlow, 'Heat of the outside air taken in, above 25 °C'),
  chargeEnthalpy: pointValue('cooling.chargeEnthalpy', enthalpyFlow, 'Heat of the charge at the ports, above 25 °C'),
  tailpipeHeat: pointValue('cooling.tailpipeHeat', heatFlow, 'Heat in the exhaust behind the turbine'),
  turboBearingLoss: pointValue('cooling.turboBearingLoss', heatFlow, 'Power lost in the turbocharger’s bearings'),
  exhaustTemperature: pointValue('cooling.exhaustTemperature', exhaustGasTemperature, 'Exhaust temperature before the turbine'),
  exhaustTemperatureLow: pointValue('cooling.exhaustTemperatureLow', exhaustGasTemperature, 'Exhaust temperature, low end of the band'),
  exhaustTemperatureHigh: pointValue('cooling.exhaustTemperatureHigh', exhaustGasTemperature, 'Exhaust temperature, high end of the band'),
  exhaustTemperatureAsked: pointValue('cooling.exhaustTemperatureAsked', exhaustGasTemperature, 'Exhaust temperature before the turbine at the boost asked'),
  coreAirFlow: pointValue('cooling.coreAirFlow', coreAir),
  coreAirTemperature: pointValue('cooling.coreAirTemperature', coreAirTemperatureOf),
  pumpFlow: pointValue('cooling.coolantFlow', coolantFlowOf, 'Flow of the coolant pump'),
  coolantTemperature: pointValue('cooling.coolantTemperature', coolantTemperatureOf, 'Coolant temperature leaving the engine'),
  boilingPoint: pointValue('cooling.boilingPoint', boilingPointOf),
} as const
