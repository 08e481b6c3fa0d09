import { at as heat } from '../cooling/point.ts'
import { airCapacityRate } from '../cooling/airCapacityRate.ts'
import { capacityRatio } from '../cooling/capacityRatio.ts'
import { conductanceFromUnits } from '../cooling/conductanceFromUnits.ts'
import { effectivenessFromHeat } from '../cooling/effectivenessFromHeat.ts'
import { effectivenessOf } from '../cooling/effectivenessOf.ts'
import { sustainedShare } from '../cooling/fields.ts'
import { coolerConductance, effectivenessValue, heatFlow, transferUnitsOf } from '../cooling/quantities.ts'
import { transferUnits } from '../cooling/transferUnits.ts'
import { transferUnitsFor } from '../cooling/transferUnitsFor.ts'
import { warmedOutlet } from '../cooling/warmedOutlet.ts'
import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { coolerAirAt } from './coolerAirAt.ts'
import { cooledOilTemperature } from './cooledOilTemperature.ts'
import {
  coolerAir, coolerAirExponent, coolerAirSide, coolerOilExponent, coolerRatedAir, coolerRatedDifference, coolerRatedHeat, coolerRatedOil, density15, pumpPerTurn, pumpRatio, pumpShare,
  temperatureLimit, thermostat,
} from './fields.ts'
import { heldByThermostat } from './heldByThermostat.ts'
import { oilCapacityRate } from './oilCapacityRate.ts'
import { oilCoolerConductance } from './oilCoolerConductance.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { oilSpecificHeatAt } from './oilSpecificHeatAt.ts'
import { at } from './point.ts'
import { pumpDelivery } from './pumpDelivery.ts'
import { oilFlow, oilTemperature } from './quantities.ts'
import { sustainedOilHeat } from './sustainedOilHeat.ts'

const arrangement = 'crossUnmixed'

export default calculation({
  id: 'oil-temperature', title: 'Oil temperature on a long pull', theme: 'oil',
  asks: 'At what temperature does the oil settle when the load is kept up?',
  article: 'the-oil-cooler', cautions: ['hot-oil', 'model-only'],
  in: {
    speed: engine.speed, fullHeat: heat.oilHeat, share: sustainedShare, air: siteAirTemperature, outside: siteAirPressure, density15,
    perTurn: pumpPerTurn, ratio: pumpRatio, efficiency: pumpShare,
    ratedHeat: coolerRatedHeat, ratedDifference: coolerRatedDifference, ratedOil: coolerRatedOil, ratedAir: coolerRatedAir,
    airFlow: coolerAir, airSide: coolerAirSide, airExponent: coolerAirExponent, oilExponent: coolerOilExponent, opens: thermostat, limit: temperatureLimit,
  },
  out: {
    temperature: at.oilTemperature, back: role(oilTemperature, 'T_b', 'Oil on its way back to the pump'), heat: heatFlow, flow: oilFlow,
    conductance: coolerConductance, units: transferUnitsOf, effectiveness: effectivenessValue,
  },
  curve: ['airFlow', 'temperature'],
  answer({ speed, fullHeat, share, air, outside, density15, perTurn, ratio, efficiency, ratedHeat, ratedDifference, ratedOil, ratedAir, airFlow, airSide, airExponent, oilExponent, opens, limit }) {
    // Oil is taken as it is at the limit temperature: its capacity changes little with a few degrees.
    const density = oilDensityAt({ density15, temperature: limit })
    const specificHeat = oilSpecificHeatAt({ density15, temperature: limit })
    const ratedOilRate = oilCapacityRate({ flow: ratedOil, density, specificHeat })
    const ratedAirRate = airCapacityRate({ air: ratedAir })
    const rated = { one: ratedOilRate, other: ratedAirRate }
    const ratedUnits = transferUnitsFor({ arrangement, effectiveness: effectivenessFromHeat({ heat: ratedHeat, ...rated, difference: ratedDifference }), ratio: capacityRatio(rated) })
    const flow = pumpDelivery({ perTurn, ratio, speed, efficiency })
    const passing = coolerAirAt({ air: airFlow, outside })
    const conductance = oilCoolerConductance({ rated: conductanceFromUnits({ units: ratedUnits, ...rated }), airShare: airSide, air: passing, ratedAir, airExponent, oil: flow, ratedOil, oilExponent })
    const oilRate = oilCapacityRate({ flow, density, specificHeat })
    const airRate = airCapacityRate({ air: passing })
    const now = { one: oilRate, other: airRate }
    const units = transferUnits({ conductance, ...now })
    const effectiveness = effectivenessOf({ arrangement, units, ratio: capacityRatio(now) })
    const heat = sustainedOilHeat({ heat: fullHeat, share })
    const cooled = cooledOilTemperature({ air, heat, effectiveness, oilRate, airRate })
    const temperature = heldByThermostat({ cooled, opens })
    return { temperature, back: warmedOutlet({ inlet: temperature, heat, rate: oilRate }), heat, flow, conductance, units, effectiveness }
  },
  says: ({ temperature, opens }) => (temperature <= opens
    ? 'At {speed} the cooler has more than enough: the thermostat holds the oil at {temperature}.'
    : 'At {speed} the oil carries {heat} and settles at {temperature} behind its cooler.'),
  leavesOut: 'Heat the sump gives off by itself, warm air from other coolers in front, air thinned by a hot day (1 % less for 3 K), and the minutes it takes to get there.',
})
