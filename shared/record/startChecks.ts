import { type Field } from '../build/field.ts'
import { type Point, type Solved } from '../build/point.ts'
import { type PointValue } from '../build/pointValue.ts'
import { fromAt, valueAt, type From, type Sheet } from '../build/sheet.ts'
import { at as boost } from '../boost/point.ts'
import { crackingPressure } from '../boost/crackingPressure.ts'
import { diaphragmAreaOf, firstMovement, fullTravel, springPreloadOf } from '../boost/fields.ts'
import { at as cooling } from '../cooling/point.ts'
import { capPressure, coolantLimit, coolantVolume, glycol, thermostatOpens } from '../cooling/fields.ts'
import { freezingPoint } from '../cooling/freezingPoint.ts'
import { coolantVolumeOf, freezingPointOf } from '../cooling/quantities.ts'
import { at as engine } from '../engine/point.ts'
import { engineMapSensorMax, engineSpeedLimit, idleLambda, idleManifoldPressure, idleSpeed, siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { at as fuel } from '../fuel/point.ts'
import {
  deadTimeVoltage, handoverStart, premix, primaryDeadTime, primaryFlow, primaryRatedDrop, regulatorRefers, regulatorSetting, secondaryDeadTime, secondaryFlow, secondaryRatedDrop, tank,
} from '../fuel/fields.ts'
import { premixDoseFor } from '../fuel/premixDoseFor.ts'
import { oilDose, railPressure } from '../fuel/quantities.ts'
import { at as oil } from '../oil/point.ts'
import { grade, relief, sealsBy, temperatureLimit, volume } from '../oil/fields.ts'
import { at as spark } from '../spark/point.ts'
import { type Quantity, type Shape } from '../quantity/quantity.ts'
import { litre } from '../quantity/si.ts'
import { actuatorPressure } from '../boost/quantities.ts'
import { type StartStep } from './startSteps.ts'

/** One number to expect, and where it came from: the sheet says how well it is known, the model what it reckoned from the sheet. */
export type Stated = { readonly name: string; readonly shape: Shape; readonly value: number | string | null; readonly from: From | 'model' }
/** How a step is done, what stops the start there, the numbers of this build, and the lines of the record in which what was found is written. */
export type Check = { readonly how: string; readonly stop?: string; readonly numbers: readonly Stated[]; readonly measured?: readonly string[] }

/** What to expect at each step of a first start of this build. */
export function startChecks(sheet: Sheet, solved: Solved): Readonly<Record<StartStep, Check>> {
  const says = <S extends Shape>(field: Field<S>, name = field.label ?? field.shape.name): Stated => ({ name, shape: field.shape, value: valueAt(sheet, field) as number | string | null, from: fromAt(sheet, field) })
  const reckoned = (name: string, shape: Quantity, value: number | null | undefined): Stated => ({ name, shape, value: value ?? null, from: 'model' })
  const idle = (value: PointValue, name: string): Stated => reckoned(name, value.shape, solved.idle.values[value.path])
  const most = (value: PointValue, name: string): Stated => reckoned(name, value.shape, greatest(solved.points, value.path))
  const share = valueAt(sheet, premix), tankful = valueAt(sheet, tank), mixture = valueAt(sheet, glycol), coolant = valueAt(sheet, coolantVolume), setting = valueAt(sheet, regulatorSetting)
  const dose = (litres: number | null): number | null => (share === null || litres === null ? null : premixDoseFor({ wanted: share, added: litres, present: 0, presentShare: 0 }))
  const peakBoost = greatest(solved.points, boost.boost.path)
  const withManifold = valueAt(sheet, regulatorRefers) === 'manifold'
  const mixed = valueAt(sheet, sealsBy) !== 'metered' && share !== null && share > 0
  const preload = valueAt(sheet, springPreloadOf), area = valueAt(sheet, diaphragmAreaOf)
  return {
    written: { how: 'Open the record and fill in what is still blank while it can be measured. A figure outside what is expected is settled now, not after the start.', numbers: [] },
    turned: { how: 'Three turns of the shaft take each rotor round once, past every seal and bolt. Feel for a tight place and listen for metal.', stop: 'It catches at the same place in every turn.', numbers: [] },
    actuator: {
      how: 'Pump air to the port and watch the rod: it stirs at the first pressure and is out at the second, and stays out while you hold it. On the engine exhaust pressure helps it open, so boost on the spring alone comes out lower.',
      stop: 'The rod stays still, creeps back under steady pressure, or moves without any.',
      numbers: [
        valueAt(sheet, firstMovement) === null ? reckoned('First movement, from spring and diaphragm', actuatorPressure, preload === null || area === null ? null : crackingPressure({ preload, exhaustForce: 0, diaphragmArea: area })) : says(firstMovement, 'First movement'),
        says(fullTravel, 'Full travel'),
      ],
    },
    extinguisher: { how: 'One for liquid fire, in the hand of somebody who does nothing else. Doors open, exhaust led outside, nobody in the plane of flywheel, clutch or belts.', numbers: [] },
    'oil-filled': { how: 'Fill to the upper mark, and filter and turbocharger feed by hand. Cooler and lines fill while it cranks: top up then, until the sum comes to this amount.', numbers: [says(grade), says(volume)] },
    'coolant-bled': {
      how: 'Nose of the car up, heater open, fill until it comes without bubbles at the highest bleed. The cap goes on before the start, and never comes off warm.',
      numbers: [says(coolantVolume), says(glycol), reckoned('Concentrate for that share', coolantVolumeOf, coolant === null || mixture === null ? null : coolant * mixture), reckoned('Freezes at', freezingPointOf, mixture === null ? null : freezingPoint({ glycol: mixture })), says(capPressure, 'Cap lets go at')],
    },
    premix: mixed
      ? { how: 'Oil into the tank first, fuel onto it. Count what is in the tank already.', numbers: [says(premix, 'Oil share of the fuel'), reckoned('Oil for a first 20 litres', oilDose, dose(litre(20))), reckoned('Oil for a whole tank', oilDose, dose(tankful))] }
      : { how: 'The sheet has no oil in the fuel. Then the metering pump must be filled and its lines free of air, or the seals start dry: many builders mix the first tank all the same (common practice, no source).', numbers: [says(sealsBy)] },
    sensors: {
      how: 'Cold and still, the manifold sensor must read the barometer, every temperature the air of the bay, oil and boost gauge nothing. Move the pedal once: throttle from 0 to 100 %. A sensor that is wrong here is wrong at full boost, where you will believe it.',
      stop: 'The manifold sensor is off the barometer by more than 2 kPa, or two temperatures differ by more than 3 °C after a night at rest (common practice, no source).',
      numbers: [says(siteAirPressure, 'Air pressure on the day of the sheet'), says(siteAirTemperature, 'Its temperature'), says(engineMapSensorMax), most(engine.manifold, 'Highest manifold pressure it will meet')],
    },
    controller: {
      how: 'Type flow, its pressure and dead times from the same data as the sheet. Secondaries stay shut below their hand-over, so for the first start they may stay unplugged.',
      numbers: [says(primaryFlow), says(primaryRatedDrop, 'rated at, primary'), says(primaryDeadTime), says(secondaryFlow), says(secondaryRatedDrop, 'rated at, secondary'), says(secondaryDeadTime), says(deadTimeVoltage, 'Dead times at'), says(handoverStart, 'Secondaries begin at'), idle(spark.chargeTime, 'Coils charge for')],
    },
    limits: {
      how: 'Set the cuts before the first start, and low: half the speed and no boost until it has run in (common practice, no source). These are the ends of the sheet; the first pulls stay below all of them.',
      numbers: [says(engineSpeedLimit), most(boost.boost, 'Highest boost of the sweep'), says(coolantLimit, 'Coolant'), says(temperatureLimit, 'Oil')],
    },
    'fuel-leak': { how: 'Let the pump run with the engine still, hose of the regulator off. Look and feel at every joint, then switch off: pressure must fall slowly, not at once.', stop: 'Any joint is wet, or you smell fuel.', numbers: [says(regulatorSetting, 'Rail pressure, hose open to the air')], measured: ['rail'] },
    regulator: withManifold
      ? { how: 'Hand pump on the regulator’s hose: each bar on the hose must put one bar on the rail. Do it up to the boost you mean to run; it proves regulator, pump and gauge at once, at no flow.', stop: 'The rail stays behind the hose.', numbers: [reckoned('With this on the hose', boost.boost.shape, peakBoost), reckoned('the rail must stand at', railPressure, peakBoost === null || setting === null ? null : setting + peakBoost)] }
      : { how: 'This regulator looks at outside air: rail pressure must not move when the manifold’s does. Check that nothing else is on its hose.', numbers: [says(regulatorSetting, 'Rail pressure at all times')] },
    cranked: { how: 'Plugs out, fuel and spark off, in bursts of ten seconds with a rest for the starter, until the gauge stands. Take the compression of each face now, with the cranking speed beside it.', stop: 'No pressure after three bursts. Find out why before anything else.', numbers: [says(relief, 'Relief valve, never above')], measured: ['oil-cranking', 'cranking'] },
    timing: { how: 'Plugs in, injectors unplugged, light on the mark while it cranks, once for the leading and once for the trailing side. What the controller shows and what the light shows must agree.', stop: 'They differ: the engine would be tuned by a number that is not true.', numbers: [] },
    started: { how: 'One watches the oil gauge, one the fuel lines, one the key. Off at once without oil pressure, at any new noise, at any leak.', numbers: [idle(oil.gaugePressure, 'Oil pressure at hot idle, by the model')], measured: ['oil-idle'] },
    idle: {
      how: 'Let it settle, then hold what the log says against these. Far more manifold pressure for the same idle is a leak or late timing; a pulse far from this one is a wrong injector number.',
      numbers: [says(idleSpeed), says(idleManifoldPressure), says(idleLambda), idle(fuel.primaryPulse, 'Pulse of a primary'), idle(fuel.railPressure, 'Rail pressure')],
    },
    warm: {
      how: 'The hose behind the thermostat goes hot at its opening, the level falls once more, the fan starts and stops. Then top up cold.',
      stop: 'The hose stays cold while the gauge climbs, or either limit is reached standing.',
      numbers: [says(thermostatOpens), idle(cooling.boilingPoint, 'Coolant boils, cap on, at'), says(coolantLimit), says(temperatureLimit)],
    },
    leaks: { how: 'Engine off, light in hand: underneath, behind the turbocharger, at every fuel joint. Hot metal and hot coolant stay dangerous for an hour.', numbers: [] },
    retorque: { how: 'After it is cold right through. Only fasteners whose maker asks for it; a stretched or locked bolt is replaced, not pulled again.', numbers: [] },
  }
}

const greatest = (points: readonly Point[], path: string): number | null => {
  const all = points.map((p) => p.values[path]).filter((v) => v !== undefined)
  return all.length === 0 ? null : Math.max(...all)
}
