import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { hoseBoreOf } from '@trochoid/compute/fuel/hoseBoreOf.ts'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'
import { lineBore, linePressureLoss } from '@trochoid/compute/fuel/quantities.ts'
import { relief } from '@trochoid/compute/oil/fields.ts'
import { filmAtTemperature } from '@trochoid/compute/oil/filmAtTemperature.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'
import oilTemperatureOf from '@trochoid/compute/oil/oilTemperature.calc.ts'
import { pumpDelivery } from '@trochoid/compute/oil/pumpDelivery.ts'
import { oilFlow, oilTemperature } from '@trochoid/compute/oil/quantities.ts'
import { degC, mm, rpm } from '@trochoid/compute/quantity/si.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { asked } from './asked.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

/** Taken for the drawing, as a build sheet has no lines to the cooler: both hoses together, and the loss of their four ends. */
const length = 3, ends = 4
const slow = rpm(2000)

type Data = Drawn & {
  readonly speed: number; readonly hot: number; readonly given: number; readonly taken: number; readonly thicker: number
  readonly sizes: readonly { readonly dash: number; readonly loss: number }[]
}

/** What the hoses to the cooler and back lose over their bore, hot at speed and cold just above idle. */
export default lineFigure<Data>({
  title: 'What the lines to an oil cooler lose over their bore',
  says: 'Pressure loss of the oil cooler’s lines over their bore, with hot oil at the speed of most power and with oil at 20 and 0 °C at a low speed.',
  x: lineBore, y: linePressureLoss, named: { x: 'Bore of both lines', y: 'Pressure loss' },
  from(build) {
    const { point, sheet } = build
    const hot = point['oil.temperature'], viscosity40 = point['oil.sumpViscosity40'], viscosity100 = point['oil.sumpViscosity100'], taken = point['oil.flow'], opens = valueAt(sheet, relief)
    if (hot === undefined || viscosity40 === undefined || viscosity100 === undefined || taken === undefined || opens === null) return null
    const { given } = asked(oilTemperatureOf, build)
    const speed = given('speed'), density15 = given('density15')
    const pumped = (at: number): number => pumpDelivery({ perTurn: given('perTurn'), ratio: given('ratio'), speed: at, efficiency: given('efficiency') })
    // Oil in a hose is sheared little: the whole of its viscosity counts. The hose is taken as smooth.
    const oilAt = (temperature: number) => ({ viscosity: filmAtTemperature({ viscosity40, viscosity100, density15, share: 1, temperature }), density: oilDensityAt({ density15, temperature }) })
    const loses = (bore: number, flow: number, temperature: number): number => lineLossOf({ flow, bore, length, fittings: ends, roughness: 0, ...oilAt(temperature) }).loss
    const x = steps(mm(8), mm(24), 32)
    // Lines end where the relief valve has opened: no more than that can be lost.
    const line = (flow: number, temperature: number) => x.map((bore) => { const loss = loses(bore, flow, temperature); return loss > opens ? null : loss })
    const dashes = [10, 12, 16].map((dash) => ({ dash, bore: hoseBoreOf({ dash }) }))
    return {
      speed, hot, given: pumped(speed), taken, thicker: oilAt(degC(0)).viscosity / oilAt(hot).viscosity, x,
      sizes: dashes.map(({ dash, bore }) => ({ dash, loss: loses(bore, pumped(speed), hot) })),
      lines: [
        { name: 'Hot at most power, all of the pump', y: line(pumped(speed), hot) }, { name: 'Hot, what the engine takes', y: line(taken, hot) },
        { name: '20 °C, low speed', y: line(pumped(slow), degC(20)) }, { name: '0 °C, low speed', y: line(pumped(slow), degC(0)) },
      ],
      levels: [{ says: 'relief valve opens', at: opens }],
      uprights: dashes.map(({ dash, bore }) => ({ says: `dash ${dash}`, at: bore })),
    }
  },
  summary({ speed, hot, given, taken, thicker, sizes }, system) {
    const p = shown(linePressureLoss, system), t = shown(oilTemperature, system), n = shown(shaftSpeed, system), q = shown(oilFlow, system)
    return `Two smooth hoses of ${length} m together, with four ends that lose one velocity head each (taken for the drawing). With oil at ${t.say(hot)} and all the ${q.say(given)} that the pump moves at ${n.say(speed)} they lose ${sizes.map(({ dash, loss }) => `${p.say(loss)} in dash ${dash}`).join(', ')}. Where the relief valve stands before them, only the ${q.say(taken)} that the engine takes go through. The low speed is ${n.say(slow)}: this oil is ${writeNumber(thicker, 2)} times as thick at ${t.say(degC(0))} as hot, and a line ends where the relief valve would have opened. The core itself comes on top, and nobody knows its loss but who measured it.`
  },
  without: 'The oil of this build is not known, so nothing is drawn.',
})
