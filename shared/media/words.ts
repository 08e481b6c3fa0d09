import { type WordsFor } from '../quantity/quantity.ts'
import type * as quantities from './quantities.ts'

/** What each quantity of air and exhaust gas means and how to measure it. */
export const words = {
  airDensity: { means: 'Mass of a volume of air: what an engine fills its chambers with.', measure: 'From pressure, temperature and humidity; nobody weighs it.' },
  vapourPressureOfWater: { means: 'The part of the air pressure that water vapour makes. It brings no oxygen.', measure: 'Relative humidity from a hygrometer, times the saturation pressure at the same temperature.' },
  saturation: { means: 'The highest vapour pressure that air at this temperature can hold before water condenses.', measure: 'From the temperature alone.' },
  dryPressure: { means: 'Air pressure less vapour pressure: the part that brings oxygen.', measure: 'A barometer or the manifold sensor, less the vapour pressure.' },
  vapourShareOfAir: { means: 'How many of the molecules in the air are water.', measure: 'Vapour pressure divided by air pressure.' },
  enhancement: { means: 'By how much air over water holds more vapour than a vacuum over water would.', measure: 'From pressure and temperature; it is close to one.' },
  compressibility: { means: 'How far real air departs from the law of an ideal gas.', measure: 'From pressure, temperature and humidity; near one in any weather.' },
  geopotentialAltitude: { means: 'Height above sea level, counted at constant gravity.', measure: 'A map or a satellite receiver; the difference from true height is 0.02 % at 1,000 m.' },
  densityAltitudeOf: { means: 'Height in the standard atmosphere at which air is as thin as here and now.', measure: 'From a barometer, a thermometer and a hygrometer at the track.' },
  gasViscosity: { means: 'How much a gas resists shear.', measure: 'Tables, from temperature.' },
  soundSpeed: { means: 'How fast a small pressure wave runs through the gas.', measure: 'From the temperature of the gas.' },
  enthalpyFlow: { means: 'Heat or shaft power that an air flow takes up between two temperatures.', measure: 'Mass flow and a thermometer before and after.' },
  exhaustGasTemperature: { means: 'Temperature of the exhaust gas, mixed over the pulses.', measure: 'A bare thermocouple in the middle of the stream just after the ports; it reads tens of kelvin low from radiation.' },
  exhaustEnthalpyOf: { means: 'Heat in each kilogram of exhaust gas above 25 °C.', measure: 'From its temperature; what is unburned is counted apart.' },
} satisfies WordsFor<typeof quantities>
