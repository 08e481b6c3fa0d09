import { type FieldValues } from '../build/fieldValues.ts'
import { type Solved } from '../build/point.ts'
import { coolerEffectiveness } from '../boost/coolerEffectiveness.ts'
import { airCapacityRate } from '../cooling/airCapacityRate.ts'
import { capacityRatio } from '../cooling/capacityRatio.ts'
import { chargeSideEffectiveness } from '../cooling/chargeSideEffectiveness.ts'
import { conductanceFromUnits } from '../cooling/conductanceFromUnits.ts'
import { coolantBoilingPoint } from '../cooling/coolantBoilingPoint.ts'
import { coolantDensity } from '../cooling/coolantDensity.ts'
import { coolantHeatCapacity } from '../cooling/coolantHeatCapacity.ts'
import { coolantSpecificHeat } from '../cooling/coolantSpecificHeat.ts'
import { coreAirFlow } from '../cooling/coreAirFlow.ts'
import { coreToAirAt } from '../cooling/coreToAirAt.ts'
import { effectivenessFromHeat } from '../cooling/effectivenessFromHeat.ts'
import { effectivenessOf } from '../cooling/effectivenessOf.ts'
import { heatOfRadiator } from '../cooling/heatOfRadiator.ts'
import { metalConductanceAt } from '../cooling/metalConductanceAt.ts'
import { metalHeatCapacity } from '../cooling/metalHeatCapacity.ts'
import { pressureUnderCap } from '../cooling/pressureUnderCap.ts'
import { pumpFlowAt } from '../cooling/pumpFlowAt.ts'
import { ramPressure } from '../cooling/ramPressure.ts'
import { ratedConductance } from '../cooling/ratedConductance.ts'
import { ratingAirDensity } from '../cooling/ratingAirDensity.ts'
import { stackDrop } from '../cooling/stackDrop.ts'
import { transferUnits } from '../cooling/transferUnits.ts'
import { transferUnitsFor } from '../cooling/transferUnitsFor.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { coolerAirAt } from '../oil/coolerAirAt.ts'
import { oilCapacityRate } from '../oil/oilCapacityRate.ts'
import { oilCoolerConductance } from '../oil/oilCoolerConductance.ts'
import { oilDensityAt } from '../oil/oilDensityAt.ts'
import { oilSpecificHeatAt } from '../oil/oilSpecificHeatAt.ts'
import { pumpDelivery } from '../oil/pumpDelivery.ts'
import { overSpeed } from './overSpeed.ts'
import { type Piece } from './piece.ts'
import { type Flows, type Store } from './rates.ts'

/** What another cooler, or another place for one, changes. */
export type Change = { readonly radiators?: number; readonly oilCoolers?: number; readonly coverage?: number; readonly pump?: number }

/** Temperature at which properties that change little are taken. */
const warm = 363.15
const crossUnmixed = 'crossUnmixed'

/** What a build stores and moves of heat: its numbers, and what each piece of a session makes of them. */
export function plantFrom(fields: FieldValues, solved: Solved, change: Change = {}) {
  const number = (path: string): number => fields.get(path) as number
  const { radiators = 1, oilCoolers = 1 } = change
  const coverage = change.coverage ?? number('cooling.core.coverage')
  const pumpRated = number('cooling.pump.ratedFlow') * (change.pump ?? 1)
  const glycol = number('cooling.glycol')
  const outside = { temperature: number('site.airTemperature'), pressure: number('site.airPressure') }
  const density = gasDensity(outside)
  const ratedAir = number('cooling.radiator.ratedAirFlow')
  const { conductance } = ratedConductance({ heat: number('cooling.radiator.ratedHeat'), coolantTemperature: number('cooling.radiator.ratedCoolantTemperature'), airTemperature: number('cooling.radiator.ratedAirTemperature'), air: ratedAir, coolant: number('cooling.radiator.ratedCoolantFlow'), glycol })
  const airExponent = number('cooling.radiator.airExponent')
  const stack = stackDrop({ radiator: number('cooling.core.ratedDrop'), front: number('cooling.core.frontDrop'), coverage })
  const airAt = (carSpeed: number): number => coreAirFlow({
    ram: ramPressure({ density, speed: carSpeed, recovery: number('cooling.ramRecovery') }), shutOff: number('cooling.fan.shutOffPressure'), freeFlow: number('cooling.fan.freeFlow'),
    rated: stack, ratedAir, exponent: number('cooling.core.exponent'), density, ratedDensity: ratingAirDensity({ temperature: number('cooling.radiator.ratedAirTemperature') }),
  })
  const judgedAir = airAt(number('cooling.carSpeed'))

  const oilAt = { density15: number('oil.density'), temperature: warm }
  const oilProperties = { density: oilDensityAt(oilAt), specificHeat: oilSpecificHeatAt(oilAt) }
  const oilRated = { one: oilCapacityRate({ flow: number('oil.cooler.ratedOilFlow'), ...oilProperties }), other: airCapacityRate({ air: number('oil.cooler.ratedAirFlow') }) }
  const oilConductance = conductanceFromUnits({ units: transferUnitsFor({ arrangement: crossUnmixed, effectiveness: effectivenessFromHeat({ heat: number('oil.cooler.ratedHeat'), ...oilRated, difference: number('oil.cooler.ratedDifference') }), ratio: capacityRatio(oilRated) }), ...oilRated })

  const chargeRated = airCapacityRate({ air: number('boost.coolerRatedFlow') })
  const coreRated = number('cooling.chargeCooler.airConductance')
  const heats = {
    coolant: overSpeed(solved.points, 'cooling.coolantHeat'), oil: overSpeed(solved.points, 'cooling.oilHeat'), charge: overSpeed(solved.points, 'engine.airFlow'), hot: overSpeed(solved.points, 'boost.compressorOutletTemperature'),
  }
  const boiling = coolantBoilingPoint({ pressure: pressureUnderCap({ outside: outside.pressure, cap: number('cooling.capPressure') }), glycol })

  const radiator = { conductance, airShare: number('cooling.radiator.airSideShare'), ratedAir, airExponent, ratedCoolant: number('cooling.radiator.ratedCoolantFlow'), coolantExponent: number('cooling.radiator.coolantExponent') }
  const store: Store = {
    outside: outside.temperature, opens: number('cooling.thermostat.opens'), open: number('cooling.thermostat.fullyOpen'), oilOpens: number('oil.cooler.thermostat'), coverage, radiators, boiling,
    cast: (temperature, coolant, air, airTemperature) => heatOfRadiator({ temperature, coolant, glycol, air, airTemperature, ...radiator }),
    railConductance: number('cooling.rail.conductance'),
    capacity: {
      metal: metalHeatCapacity({ aluminium: number('cooling.aluminiumMass'), iron: number('cooling.ironMass') }),
      coolant: coolantHeatCapacity({ volume: number('cooling.coolantVolume'), density: coolantDensity({ temperature: warm, glycol }), specificHeat: coolantSpecificHeat({ temperature: warm, glycol }) }),
      oil: coolantHeatCapacity({ volume: number('oil.volume'), ...oilProperties }) + metalHeatCapacity({ aluminium: 0, iron: number('oil.metalMass') }),
      core: metalHeatCapacity({ aluminium: number('cooling.chargeCooler.mass'), iron: 0 }),
      rail: number('cooling.rail.capacity'),
    },
  }
  const metalRated = { rated: number('cooling.metalConductance'), ratedFlow: number('cooling.pump.ratedFlow'), still: number('cooling.stillShare') }

  /** The engine running: heat goes with load, coolant and oil flow with shaft speed, air with car speed. */
  function running({ speed, carSpeed, load }: Piece): Flows {
    const pump = pumpFlowAt({ rated: pumpRated, speed, ratedSpeed: number('cooling.pump.ratedSpeed') })
    const air = airAt(carSpeed)
    const flow = Math.max(load * heats.charge(speed), 1e-4)
    const oilFlow = pumpDelivery({ perTurn: number('oil.pump.perTurn'), ratio: number('oil.pump.speedRatio'), speed, efficiency: number('oil.pump.efficiency') }) / oilCoolers
    const oilAir = (coolerAirAt({ air: number('oil.cooler.airFlow'), outside: outside.pressure }) * air) / judgedAir
    const oil = { one: oilCapacityRate({ flow: oilFlow, ...oilProperties }), other: airCapacityRate({ air: oilAir }) }
    const oilUnits = transferUnits({ conductance: oilCoolerConductance({ rated: oilConductance, airShare: number('oil.cooler.airSideShare'), air: oilAir, ratedAir: number('oil.cooler.ratedAirFlow'), airExponent: number('oil.cooler.airExponent'), oil: oilFlow, ratedOil: number('oil.cooler.ratedOilFlow'), oilExponent: number('oil.cooler.oilExponent') }), ...oil })
    // The sheet's own law of effectiveness over charge flow, here from charge to core.
    const rated = coolerEffectiveness({ flow, ratedFlow: number('boost.coolerRatedFlow'), ratedEffectiveness: chargeSideEffectiveness({ rated: Math.min(number('boost.coolerRatedEffectiveness'), 0.99), charge: chargeRated, air: coreRated }) })
    return {
      metalHeat: load * heats.coolant(speed), oilHeat: load * heats.oil(speed), pump, air, running: true, bay: 0,
      toCoolant: metalConductanceAt({ ...metalRated, flow: pump }),
      charge: rated * airCapacityRate({ air: flow }), hot: outside.temperature + load * (heats.hot(speed) - outside.temperature),
      core: coreToAirAt({ rated: coreRated, air, ratedAir, exponent: airExponent, rate: airCapacityRate({ air }) }),
      oil: oilCoolers * effectivenessOf({ arrangement: crossUnmixed, units: oilUnits, ratio: capacityRatio(oil) }) * Math.min(oil.one, oil.other), oilRate: oilCoolers * oil.one,
    }
  }
  /** The engine standing: no flow, no fan, only its bay around it. */
  const standing: Flows = {
    metalHeat: 0, oilHeat: 0, pump: 0, air: 0, running: false, bay: number('cooling.bayConductance'), toCoolant: metalConductanceAt({ ...metalRated, flow: 0 }), charge: 0, hot: outside.temperature, core: 0, oil: 0, oilRate: 1,
  }
  const fastest = solved.points.reduce((a, p) => ((p.values['engine.power'] ?? -1) > (a?.values['engine.power'] ?? -1) ? p : a), solved.points[0])?.speed ?? 0
  const full = running({ seconds: 1, speed: fastest, carSpeed: number('cooling.carSpeed'), load: 1 })
  return {
    store, running, standing,
    /** Charge temperature that full throttle at the speed of greatest power would find now. */
    chargeAtFull: (core: number): number => full.hot - (full.charge / airCapacityRate({ air: heats.charge(fastest) })) * (full.hot - core),
    limits: { coolant: number('cooling.coolantLimit'), oil: number('oil.temperatureLimit'), charge: number('boost.maxChargeTemperature') },
    railStart: number('fuel.temperature'), reid: number('fuel.vapourPressure37'), held: fields.get('fuel.heldPressure') as number | null, outside,
  }
}
export type Plant = ReturnType<typeof plantFrom>
