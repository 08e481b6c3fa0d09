import { calculation, free } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { absoluteRailPressure } from '../fuel/absoluteRailPressure.ts'
import { boilingTemperatureOfFuel } from '../fuel/boilingTemperatureOfFuel.ts'
import { fuelVapour37, heldRailPressure, runningTemperature } from '../fuel/fields.ts'
import { fuelTemperature } from '../fuel/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { degC, minutes } from '../quantity/si.ts'
import { boiledAway } from './boiledAway.ts'
import { boilingHeat } from './boilingHeat.ts'
import { coolantBoilingPoint } from './coolantBoilingPoint.ts'
import { coolantDensity } from './coolantDensity.ts'
import { coolantHeatCapacity } from './coolantHeatCapacity.ts'
import { coolantSpecificHeat } from './coolantSpecificHeat.ts'
import { evenTemperature } from './evenTemperature.ts'
import { aluminiumMass, capPressure, coolantVolume, glycol, ironMass, railCapacity, railConductance } from './fields.ts'
import { marginToBoiling } from './marginToBoiling.ts'
import { metalHeatCapacity } from './metalHeatCapacity.ts'
import { pressureUnderCap } from './pressureUnderCap.ts'
import { boiledMassOf, boilingPointOf, boilMarginOf, coolantTemperatureOf, courseTime, metalTemperatureOf } from './quantities.ts'
import { soakedTemperature } from './soakedTemperature.ts'

/** The engine stopped hot, without flow: what coolant and fuel rail do. */
export default calculation({
  id: 'hot-stop',
  title: 'Hot shut-down without flow',
  theme: 'cooling',
  asks: 'Stopped hot, does the coolant boil, and does vapour form in the rail?',
  article: 'a-track-session-as-heat-soak',
  cautions: ['hot-pressurised-coolant', 'fuel-vapour', 'hot-metal', 'model-only'],
  in: {
    metal: free(metalTemperatureOf, degC(125), 'Metal when the engine stops'), coolant: free(coolantTemperatureOf, degC(100), 'Coolant when the engine stops'), time: free(courseTime, minutes(15), 'Time after the stop'),
    volume: coolantVolume, aluminium: aluminiumMass, iron: ironMass, glycol, outside: siteAirPressure, cap: capPressure,
    rail: runningTemperature, railConductance, railCapacity, reid: fuelVapour37, held: heldRailPressure,
  },
  out: {
    even: role(coolantTemperatureOf, 'T_e', 'Coolant and metal, evened out'), boiling: boilingPointOf, boiled: boiledMassOf,
    railThen: role(fuelTemperature, 'T_f', 'Rail after that time'), fuelBoils: role(fuelTemperature, 'T_fb', 'Fuel in the rail boils at'), reserve: role(boilMarginOf, 'ΔT_f', 'Rail below the boiling of its fuel'),
  },
  curve: ['metal', 'even'],
  answer({ metal, coolant, time, volume, aluminium, iron, glycol, outside, cap, rail, railConductance, railCapacity, reid, held }) {
    const boiling = coolantBoilingPoint({ pressure: pressureUnderCap({ outside, cap }), glycol })
    const metalCapacity = metalHeatCapacity({ aluminium, iron })
    const coolantCapacity = coolantHeatCapacity({ volume, density: coolantDensity({ temperature: boiling, glycol }), specificHeat: coolantSpecificHeat({ temperature: boiling, glycol }) })
    const even = evenTemperature({ metal, metalCapacity, coolant, coolantCapacity })
    const boiled = boiledAway({ even, boiling, metalCapacity, coolantCapacity, heat: boilingHeat({ temperature: boiling }) })
    const fuelBoils = boilingTemperatureOfFuel({ reid, pressure: absoluteRailPressure({ rail: held, outside }) })
    const railThen = soakedTemperature({ start: rail, source: even, conductance: railConductance, capacity: railCapacity, time })
    return { even, boiling, boiled, railThen, fuelBoils, reserve: marginToBoiling({ boiling: fuelBoils, coolant: railThen }) }
  },
  says: ({ even, boiling, reserve }) => `${even > boiling ? 'Metal and coolant would even out at {even}, above the {boiling} at which it boils: up to {boiled} leaves as vapour.' : 'Metal and coolant even out at {even}; it boils at {boiling}.'} ${reserve < 0 ? 'After {time} the rail is at {railThen}, and its fuel boils at {fuelBoils}: vapour forms.' : 'After {time} the rail is at {railThen}, {reserve} below the boiling of its fuel.'}`,
  leavesOut: 'Hot spots, which boil first; heat lost to the bay; a fan or an electric pump that runs on; rail pressure that bleeds away.',
})
