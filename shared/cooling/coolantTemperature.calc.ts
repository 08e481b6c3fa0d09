import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { write } from '../quantity/write.ts'
import { coolantBoilingPoint } from './coolantBoilingPoint.ts'
import { airExponent, capPressure, coolantExponent, glycol, pumpFlow, pumpSpeed, radiatorAirFlow, radiatorAirShare, radiatorAirTemperature, radiatorCoolantFlow, radiatorCoolantTemperature, radiatorHeat, sustainedShare, thermostatOpen, thermostatOpens } from './fields.ts'
import { at } from './point.ts'
import { pumpFlowAt } from './pumpFlowAt.ts'
import { pressureUnderCap } from './pressureUnderCap.ts'
import { boilingPointOf, heatFlow } from './quantities.ts'
import { ratedConductance } from './ratedConductance.ts'
import { steadyCoolantTemperature } from './steadyCoolantTemperature.ts'
import { sustainedHeat } from './sustainedHeat.ts'

/** The coolant's temperature once it no longer rises, under the heat that a lap sustains. */
export default calculation({
  id: 'coolant-temperature',
  title: 'Coolant temperature',
  theme: 'cooling',
  asks: 'How hot does the coolant leave the engine when it is driven hard for long?',
  article: 'sizing-the-radiator',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    speed: engine.speed, coolantHeat: at.coolantHeat, share: sustainedShare, air: at.coreAirFlow, airTemperature: at.coreAirTemperature, glycol,
    pumpFlow, pumpSpeed, opens: thermostatOpens, open: thermostatOpen,
    ratedHeat: radiatorHeat, ratedCoolantTemperature: radiatorCoolantTemperature, ratedAirTemperature: radiatorAirTemperature,
    ratedAir: radiatorAirFlow, ratedCoolant: radiatorCoolantFlow, airShare: radiatorAirShare, airExponent, coolantExponent, outside: siteAirPressure, cap: capPressure,
  },
  out: { heat: heatFlow, flow: at.pumpFlow, temperature: at.coolantTemperature },
  curve: ['coolantHeat', 'temperature'],
  answer({ speed, coolantHeat, share, air, airTemperature, glycol, pumpFlow, pumpSpeed, opens, open, ratedHeat, ratedCoolantTemperature, ratedAirTemperature, ratedAir, ratedCoolant, airShare, airExponent, coolantExponent, outside, cap }) {
    const heat = sustainedHeat({ full: coolantHeat, share })
    const flow = pumpFlowAt({ rated: pumpFlow, speed, ratedSpeed: pumpSpeed })
    const { conductance } = ratedConductance({ heat: ratedHeat, coolantTemperature: ratedCoolantTemperature, airTemperature: ratedAirTemperature, air: ratedAir, coolant: ratedCoolant, glycol })
    const temperature = steadyCoolantTemperature({ heat, pump: flow, glycol, opens, open, conductance, airShare, air, ratedAir, airExponent, ratedCoolant, coolantExponent, airTemperature })
    // Beyond its boiling point there is no liquid to which these numbers belong.
    const boiling = coolantBoilingPoint({ pressure: pressureUnderCap({ outside, cap }), glycol })
    if (temperature >= boiling) throw new NoAnswer('coolant-temperature', `The coolant boils at ${write(boiling, boilingPointOf)} before this radiator carries the heat away: it settles at no temperature.`)
    return { heat, flow, temperature }
  },
  says: ({ temperature, open }) => temperature < open
    ? '{heat} settles at {temperature}: the thermostat still holds flow back, so the radiator has room.'
    : '{heat} settles at {temperature}, with the thermostat fully open: from here every kilowatt shows.',
  leavesOut: 'time: a short burst never gets there; fouling, air in the system, a slipping belt',
})
