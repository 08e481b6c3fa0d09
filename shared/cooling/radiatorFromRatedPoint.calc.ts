import { calculation } from '../calculation/calculation.ts'
import { conductanceAtFlows } from './conductanceAtFlows.ts'
import { airExponent, coolantExponent, glycol, radiatorAirFlow, radiatorAirShare, radiatorAirTemperature, radiatorCoolantFlow, radiatorCoolantTemperature, radiatorHeat } from './fields.ts'
import { heatOfRadiator } from './heatOfRadiator.ts'
import { at } from './point.ts'
import { coolerConductance, effectivenessValue, heatFlow } from './quantities.ts'
import { ratedConductance } from './ratedConductance.ts'
import { role } from '../quantity/quantity.ts'

/** What one rated point says of a radiator, and what that makes of it at the flows of the build. */
export default calculation({
  id: 'radiator-from-rated-point',
  title: 'Radiator from one rated point',
  theme: 'cooling',
  asks: 'What does my radiator cast off at other flows than those of its rating?',
  article: 'sizing-the-radiator',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    ratedHeat: radiatorHeat, ratedCoolantTemperature: radiatorCoolantTemperature, ratedAirTemperature: radiatorAirTemperature, ratedAir: radiatorAirFlow, ratedCoolant: radiatorCoolantFlow, glycol,
    airShare: radiatorAirShare, airExponent, coolantExponent,
    air: at.coreAirFlow, airTemperature: at.coreAirTemperature, coolant: at.pumpFlow, temperature: at.coolantTemperature,
  },
  out: {
    effectiveness: effectivenessValue, conductance: role(coolerConductance, 'UA_0', 'Conductance at the rating'),
    conductanceHere: role(coolerConductance, 'UA', 'Conductance at these flows'), heat: role(heatFlow, 'Q', 'Heat cast off, thermostat open'),
  },
  curve: ['air', 'heat'],
  answer({ ratedHeat, ratedCoolantTemperature, ratedAirTemperature, ratedAir, ratedCoolant, glycol, airShare, airExponent, coolantExponent, air, airTemperature, coolant, temperature }) {
    const { conductance, effectiveness } = ratedConductance({ heat: ratedHeat, coolantTemperature: ratedCoolantTemperature, airTemperature: ratedAirTemperature, air: ratedAir, coolant: ratedCoolant, glycol })
    const conductanceHere = conductanceAtFlows({ rated: conductance, airShare, air, ratedAir, airExponent, coolant, ratedCoolant, coolantExponent })
    const heat = heatOfRadiator({ temperature, coolant, glycol, air, airTemperature, conductance, airShare, ratedAir, airExponent, ratedCoolant, coolantExponent })
    return { effectiveness, conductance, conductanceHere, heat }
  },
  says: () => 'Its rating means {conductance} and {effectiveness} of what is possible. With {air} of air at {airTemperature} and coolant at {temperature} it casts off {heat}.',
  leavesOut: 'fouling, bent fins, and tubes in which the coolant no longer flows turbulent',
})
