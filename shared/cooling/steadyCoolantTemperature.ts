import { formula, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { heatOfRadiator } from './heatOfRadiator.ts'
import { airSideShare, coolantFlowOf, coolantTemperatureOf, coolerConductance, coreAir, coreAirTemperatureOf, flowExponent, glycolVolume, heatFlow } from './quantities.ts'
import { radiatorFlow } from './radiatorFlow.ts'
import { thermostatShare } from './thermostatShare.ts'

/** Temperature of the coolant leaving the engine at which the radiator carries away the heat that is put in. */
export const about = {
  name: 'Steady coolant temperature',
  in: {
    heat: role(heatFlow, 'Q_c', 'Heat to the coolant'), pump: role(coolantFlowOf, 'V_p', 'Flow of the pump'), glycol: glycolVolume,
    opens: role(coolantTemperatureOf, 'T_t0', 'Thermostat begins to open'), open: role(coolantTemperatureOf, 'T_t1', 'Thermostat fully open'),
    conductance: role(coolerConductance, 'UA_0', 'Rated conductance'), airShare: airSideShare, air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), airExponent: role(flowExponent, 'm_a', 'Air-side exponent'),
    ratedCoolant: role(coolantFlowOf, 'V_c0', 'Rated coolant flow'), coolantExponent: role(flowExponent, 'm_c', 'Coolant-side exponent'), airTemperature: coreAirTemperatureOf,
  },
  out: coolantTemperatureOf,
  steps: [
    'Guess the temperature of the coolant leaving the engine; it is also that of the radiator’s inlet.',
    'The thermostat’s opening at that temperature gives the flow through the radiator.',
    'The radiator’s heat at that flow, with the coolant’s properties at that temperature (held beyond 125 °C).',
    'The temperature is right where this heat is the heat put in; it rises without turning, so there is one or none.',
  ],
  source: ['derived', 'first law in steady flow; the engine’s outlet is the radiator’s inlet'],
  notes: 'Steady: what a session warms up to if it lasts. Beyond the boiling point the number only says how far short the radiator is.',
} as const satisfies About

/** No radiator of a car is asked beyond this; a root that lies above it is no temperature. */
const hottest = 900

export const steadyCoolantTemperature = formula<typeof about>('steady-coolant-temperature', {}, ({
  heat, pump, glycol, opens, open, conductance, airShare, air, ratedAir, airExponent, ratedCoolant, coolantExponent, airTemperature,
}) => {
  const cast = (temperature: number): number => {
    const coolant = radiatorFlow({ pump, opening: thermostatShare({ temperature, opens, open }) })
    return heatOfRadiator({ temperature, coolant, glycol, air, airTemperature, conductance, airShare, ratedAir, airExponent, ratedCoolant, coolantExponent })
  }
  const found = untraced(() => {
    const spare = (temperature: number): number => cast(temperature) - heat
    const low = Math.max(opens, airTemperature)
    // The thermostat's end of travel is a kink: the root is sought on one side of it, where the heat is nearly a straight line.
    const kink = Math.max(open, low)
    const atKink = kink > low ? spare(kink) : -heat
    if (atKink >= 0 && kink > low) return bracketedRoot(spare, low, kink, 1e-7, -heat, atKink)
    // Beyond the kink heat rises with temperature at nearly the slope it has from the air up to there.
    const guess = kink > airTemperature + 1 && atKink + heat > 0 ? airTemperature + (1.05 * heat * (kink - airTemperature)) / (atKink + heat) : hottest
    for (const high of [Math.min(guess, hottest), hottest]) {
      const atHigh = spare(high)
      if (atHigh >= 0) return bracketedRoot(spare, kink, high, 1e-7, atKink, atHigh)
    }
    throw new NoAnswer('coolant', 'This radiator with these flows cannot carry the heat away at any temperature.')
  })
  cast(found.x)
  return root('coolant temperature', found.x, found.residual)
})
