import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { degC, minutes, percent } from '../quantity/si.ts'
import { coolantBoilingPoint } from './coolantBoilingPoint.ts'
import { coolantCourse } from './coolantCourse.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantHeatCapacity } from './coolantHeatCapacity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import {
  airExponent, aluminiumMass, capPressure, coolantExponent, coolantLimit, coolantVolume, glycol, ironMass, metalConductance, pumpFlow, pumpSpeed, radiatorAirFlow, radiatorAirShare, radiatorAirTemperature,
  radiatorCoolantFlow, radiatorCoolantTemperature, radiatorHeat, stillShare, thermostatOpen, thermostatOpens,
} from './fields.ts'
import { metalConductanceAt } from './metalConductanceAt.ts'
import { metalHeatCapacity } from './metalHeatCapacity.ts'
import { at } from './point.ts'
import { pressureUnderCap } from './pressureUnderCap.ts'
import { pumpFlowAt } from './pumpFlowAt.ts'
import { boilingPointOf, closureOf, coolantTemperatureOf, courseTime, cycleTimeOf, loadShareOf, metalTemperatureOf } from './quantities.ts'
import { ratedConductance } from './ratedConductance.ts'

/** Coolant over laps of full load and none: how hot, and how long until. */
export default calculation({
  id: 'track-session',
  title: 'Coolant over a track session',
  theme: 'cooling',
  asks: 'How hot does the coolant get over so many minutes of laps, and how soon?',
  article: 'a-track-session-as-heat-soak',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: {
    speed: engine.speed, coolantHeat: at.coolantHeat, share: free(loadShareOf, percent(50)), cycle: free(cycleTimeOf, 90), time: free(courseTime, minutes(20), 'Length of the session'), start: free(coolantTemperatureOf, degC(80), 'Metal and coolant at the start'),
    volume: coolantVolume, aluminium: aluminiumMass, iron: ironMass, toCoolant: metalConductance, still: stillShare,
    air: at.coreAirFlow, airTemperature: at.coreAirTemperature, glycol, pumpFlow, pumpSpeed, opens: thermostatOpens, open: thermostatOpen,
    ratedHeat: radiatorHeat, ratedCoolantTemperature: radiatorCoolantTemperature, ratedAirTemperature: radiatorAirTemperature, ratedAir: radiatorAirFlow, ratedCoolant: radiatorCoolantFlow,
    airShare: radiatorAirShare, airExponent, coolantExponent, limit: coolantLimit, outside: siteAirPressure, cap: capPressure,
  },
  out: {
    peak: role(coolantTemperatureOf, 'T_max', 'Highest coolant temperature'), metal: role(metalTemperatureOf, 'T_s', 'Metal at the end'), within: role(courseTime, 't_lim', 'Time within the limit'),
    boiling: boilingPointOf, lasted: role(courseTime, 't_b', 'Time that the run lasted'), closes: closureOf,
  },
  curve: ['share', 'peak'],
  answer({ speed, coolantHeat, share, cycle, time, start, volume, aluminium, iron, toCoolant, still, air, airTemperature, glycol, pumpFlow, pumpSpeed, opens, open, ratedHeat, ratedCoolantTemperature, ratedAirTemperature, ratedAir, ratedCoolant, airShare, airExponent, coolantExponent, limit, outside, cap }) {
    const boiling = coolantBoilingPoint({ pressure: pressureUnderCap({ outside, cap }), glycol })
    if (start >= boiling) throw new NoAnswer('coolant', 'The session begins above the boiling point of the coolant: start cooler, or look at cap and mixture.')
    if (!(time > 0)) throw new NoAnswer('session', 'A session takes time: enter its length.')
    const pump = pumpFlowAt({ rated: pumpFlow, speed, ratedSpeed: pumpSpeed })
    const { conductance } = ratedConductance({ heat: ratedHeat, coolantTemperature: ratedCoolantTemperature, airTemperature: ratedAirTemperature, air: ratedAir, coolant: ratedCoolant, glycol })
    const { peak, metal, within, lasted, open: closes } = coolantCourse({
      heat: coolantHeat, share, cycle, time, start, metalCapacity: metalHeatCapacity({ aluminium, iron }), coolantCapacity: coolantHeatCapacity({ volume, density: coolantDensity({ temperature: ratedCoolantTemperature, glycol }), specificHeat: coolantSpecificHeat({ temperature: ratedCoolantTemperature, glycol }) }),
      toCoolant: metalConductanceAt({ rated: toCoolant, flow: pump, ratedFlow: pumpFlow, still }), pump, glycol, opens, open, conductance, airShare, air, ratedAir, airExponent, ratedCoolant, coolantExponent, airTemperature, limit, boiling,
    })
    return { peak, metal, within, boiling, lasted, closes }
  },
  says: ({ peak, boiling, limit }) => peak >= boiling
    ? 'The coolant boils at {boiling} after {lasted}: from there the model has nothing to say.'
    : peak > limit
      ? 'The limit of {limit} is passed after {within}; the highest is {peak}, and it would boil at {boiling}.'
      : 'Over {time} the coolant stays within {peak}; you accept {limit}, and it would boil at {boiling}.',
  leavesOut: 'Oil, charge cooler and the circuit itself, which the track session page has; local hot spots; the heat of part throttle.',
})
