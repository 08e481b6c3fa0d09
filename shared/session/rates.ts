import { airCapacityRate } from '../cooling/airCapacityRate.ts'
import { boilingHeat } from '../cooling/boilingHeat.ts'
import { radiatorFlow } from '../cooling/radiatorFlow.ts'
import { thermostatShare } from '../cooling/thermostatShare.ts'
import { warmedAir } from '../cooling/warmedAir.ts'

/** What stores heat, and what stays the same while it moves. SI throughout. */
export type Store = {
  readonly outside: number; readonly opens: number; readonly open: number; readonly oilOpens: number; readonly coverage: number; readonly radiators: number; readonly boiling: number
  /** Heat of one radiator at a coolant temperature and flow, in air of that flow and temperature. */
  readonly cast: (temperature: number, coolant: number, air: number, airTemperature: number) => number
  readonly railConductance: number
  readonly capacity: { readonly metal: number; readonly coolant: number; readonly oil: number; readonly core: number; readonly rail: number }
}
/** What moves heat for a few seconds: heats in W, conductances in W/K, flows in m³/s and kg/s. */
export type Flows = {
  readonly metalHeat: number; readonly oilHeat: number; readonly pump: number; readonly air: number; readonly running: boolean
  /** From metal and coolant to the air around a standing engine. */
  readonly bay: number
  readonly toCoolant: number
  /** From charge to core, the charge's temperature before it, and from core to air. */
  readonly charge: number; readonly hot: number; readonly core: number
  /** From oil to air with its thermostat open, and the oil's capacity rate. */
  readonly oil: number; readonly oilRate: number
}

/** Places in the state. */
export const metal = 0, coolant = 1, oil = 2, core = 3, rail = 4, boiled = 5
export const states = 6

/** Heat that goes each way at one state, in W. */
export type Moved = { readonly in: number; readonly out: number; readonly toCoolant: number; readonly radiator: number; readonly oil: number; readonly intoCore: number; readonly core: number; readonly bay: number; readonly vapour: number; readonly rail: number }

/** Oil thermostats open over some ten kelvin: common practice, no source. */
const oilTravel = 10

export function moved(of: Store, f: Flows, y: ArrayLike<number>): Moved {
  const toCoolant = f.toCoolant * (y[metal]! - y[coolant]!)
  const intoCore = f.charge * (f.hot - y[core]!)
  const fromCore = f.core * (y[core]! - of.outside)
  let radiator = 0
  if (f.air > 0) {
    const flow = radiatorFlow({ pump: f.pump, opening: thermostatShare({ temperature: y[coolant]!, opens: of.opens, open: of.open }) })
    const airTemperature = warmedAir({ outside: of.outside, heat: fromCore, coverage: of.coverage, air: airCapacityRate({ air: f.air }) })
    radiator = of.radiators * of.cast(y[coolant]!, flow / of.radiators, f.air, airTemperature)
  }
  const fromOil = f.oil * Math.min(1, Math.max(0, (y[oil]! - of.oilOpens) / oilTravel)) * (y[oil]! - of.outside)
  const bay = f.bay * (y[metal]! - of.outside)
  const intoRail = f.running ? 0 : of.railConductance * (y[metal]! - y[rail]!)
  // At the boiling point no more is stored: what still comes leaves as vapour.
  const vapour = y[coolant]! >= of.boiling ? Math.max(0, toCoolant - radiator) : 0
  return { in: f.metalHeat + f.oilHeat + intoCore, out: radiator + fromOil + fromCore + bay + vapour, toCoolant, radiator, oil: fromOil, intoCore, core: fromCore, bay, vapour, rail: intoRail }
}

/** The five temperatures and what has boiled away, as first-order equations: heat in less heat out over heat capacity. */
export function ratesOf(of: Store, f: Flows) {
  const c = of.capacity
  return (_: number, y: Float64Array, dy: Float64Array): void => {
    const q = moved(of, f, y)
    dy[metal] = (f.metalHeat - q.toCoolant - q.bay - q.rail) / c.metal
    dy[coolant] = (q.toCoolant - q.radiator - q.vapour) / c.coolant
    dy[oil] = (f.oilHeat - q.oil) / c.oil
    dy[core] = (q.intoCore - q.core) / c.core
    dy[rail] = q.rail / c.rail
    dy[boiled] = q.vapour / boilingHeat({ temperature: of.boiling })
  }
}

/** Heat stored above another state, in J. */
export const stored = ({ capacity: c }: Store, from: ArrayLike<number>, to: ArrayLike<number>): number =>
  c.metal * (to[metal]! - from[metal]!) + c.coolant * (to[coolant]! - from[coolant]!) + c.oil * (to[oil]! - from[oil]!) + c.core * (to[core]! - from[core]!) + c.rail * (to[rail]! - from[rail]!)
