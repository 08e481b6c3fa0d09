import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { idleSpeed } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { balancedPressure } from '@trochoid/compute/oil/balancedPressure.ts'
import { density15, hotPressure, hotPressureSpeed, jetCoefficient, pumpPerTurn, pumpRatio, relief, rotorJet, rotorJets, turboFeed } from '@trochoid/compute/oil/fields.ts'
import { leakageByReading } from '@trochoid/compute/oil/leakageByReading.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'
import oilFilmViscosity from '@trochoid/compute/oil/oilFilmViscosity.calc.ts'
import { openAreaOf } from '@trochoid/compute/oil/openAreaOf.ts'
import { pumpDelivery } from '@trochoid/compute/oil/pumpDelivery.ts'
import { oilPressure, oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { relievedPressure } from '@trochoid/compute/oil/relievedPressure.ts'
import { degC } from '@trochoid/compute/quantity/si.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly idle: number; readonly speed: number; readonly warm: number; readonly hot: number; readonly taken: number }

/** What the gauge shows as the oil warms, the gaps being those that one hot reading tells: along the lines only the oil changes. */
export default lineFigure<Data>({
  title: 'The same engine on the gauge, warm and hot',
  says: 'Gallery pressure over oil temperature at idle and at the speed of the hot reading.',
  x: oilTemperature, y: oilPressure,
  from({ sheet, solved }) {
    const film: AnyCalculation = oilFilmViscosity
    const idle = valueAt(sheet, idleSpeed), speed = valueAt(sheet, hotPressureSpeed), reading = valueAt(sheet, hotPressure), setting = valueAt(sheet, relief)
    const at15 = valueAt(sheet, density15), perTurn = valueAt(sheet, pumpPerTurn), ratio = valueAt(sheet, pumpRatio), coefficient = valueAt(sheet, jetCoefficient)
    const jets = valueAt(sheet, rotorJets), jet = valueAt(sheet, rotorJet), restrictor = valueAt(sheet, turboFeed)
    // The reading is taken as read where the oil stands at the lowest speeds, which the thermostat holds.
    const taken = solved.idle.values['oil.temperature']
    if (idle === null || speed === null || reading === null || setting === null || at15 === null || perTurn === null || ratio === null) return null
    if (coefficient === null || jets === null || jet === null || restrictor === null || taken === undefined || reading >= setting) return null
    const viscosity = (temperature: number): number | null => answered(film, { ...valuesFor(film, sheet, solved.idle.values), temperature }, 'viscosity')
    const density = (temperature: number): number => oilDensityAt({ density15: at15, temperature })
    const ideal = (n: number): number => pumpDelivery({ perTurn, ratio, speed: n, efficiency: 1 })
    const holes = { area: openAreaOf({ jets, jet, restrictor }), coefficient }
    const then = viscosity(taken)
    if (then === null) return null
    const leakage = leakageByReading({ ideal: ideal(speed), reading, viscosity: then, ...holes, density: density(taken) })
    const pressure = (n: number, temperature: number): number | null => {
      const now = viscosity(temperature)
      return now === null ? null : relievedPressure({ pressure: balancedPressure({ ideal: ideal(n), leakage, viscosity: now, ...holes, density: density(temperature) }), setting: setting })
    }
    const x = steps(degC(60), degC(140), 16)
    const warm = pressure(idle, degC(80)), hot = pressure(idle, degC(120))
    if (warm === null || hot === null) return null
    return {
      idle, speed, warm, hot, taken, x,
      lines: [{ name: 'Speed of the reading', y: x.map((t) => pressure(speed, t)) }, { name: 'Idle', y: x.map((t) => pressure(idle, t)) }],
      levels: [{ says: 'relief', at: setting }], marks: [{ says: 'the reading', x: taken, y: reading }],
    }
  },
  summary({ idle, speed, warm, hot, taken }, system) {
    const p = shown(oilPressure, system), t = shown(oilTemperature, system), n = shown(shaftSpeed, system)
    return `At ${n.say(idle)} and ${n.say(speed)}. Between ${t.say(degC(80))} and ${t.say(degC(120))} idle pressure goes from ${p.say(warm)} to ${p.say(hot)}, with nothing changed but the oil. The gaps are those that the reading tells, taken as read at ${t.say(taken)}. A reading without a temperature beside it can be anywhere along its line.`
  },
  without: 'Without a hot reading below the relief setting the gaps are not known well enough to draw this. Enter one in the sheet, with its speed.',
})
