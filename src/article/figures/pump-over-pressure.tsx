import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { pumpNumber, pumpRatedFlow, pumpRatedPressure, pumpRatedVoltage, pumpSecondFlow, pumpSecondPressure, pumpVoltageExponent, pumpWiringDrop } from '@trochoid/compute/fuel/fields.ts'
import { pumpFlowAtPressure } from '@trochoid/compute/fuel/pumpFlowAtPressure.ts'
import { pumpFlowAtVoltage } from '@trochoid/compute/fuel/pumpFlowAtVoltage.ts'
import { pumpFlow, pumpPressure, pumpVoltage } from '@trochoid/compute/fuel/quantities.ts'
import { voltage } from '@trochoid/compute/spark/fields.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly reaches: number; readonly against: number; readonly asked: number; readonly given: number }

/** Pump flow over pressure at the voltage that reaches it, at one volt and a half less, and at the rated one; with what the engine asks. */
export default lineFigure<Data>({
  title: 'Pump flow over pressure, at three voltages',
  says: 'Pump flow over pressure at three voltages, with the flow that the engine asks and the pressure at which it asks.',
  x: pumpPressure, y: pumpFlow,
  from({ sheet, point }) {
    const flow = valueAt(sheet, pumpRatedFlow), at = valueAt(sheet, pumpRatedPressure), secondFlow = valueAt(sheet, pumpSecondFlow), secondAt = valueAt(sheet, pumpSecondPressure)
    const rated = valueAt(sheet, pumpRatedVoltage), exponent = valueAt(sheet, pumpVoltageExponent), number = valueAt(sheet, pumpNumber), system = valueAt(sheet, voltage), lost = valueAt(sheet, pumpWiringDrop)
    const against = point['fuel.pumpPressure'], asked = point['fuel.volumeFlow'], given = point['fuel.pumpFlow']
    if (flow === null || at === null || secondFlow === null || secondAt === null || rated === null || exponent === null || number === null || system === null || lost === null || secondAt <= at) return null
    if (against === undefined || asked === undefined || given === undefined || point['engine.power'] === undefined) return null
    const reaches = system - lost
    const over = (volts: number) => (pressure: number): number => Math.max(0, pumpFlowAtVoltage({ flow: pumpFlowAtPressure({ pressure, flow, at, secondFlow, secondAt }), number, voltage: volts, ratedVoltage: rated, exponent }))
    const x = steps(Math.min(1e5, at), Math.max(1.1 * secondAt, 1.2 * against), 20)
    return {
      reaches, against, asked, given, x,
      lines: [{ name: 'As rated', y: x.map(over(rated)) }, { name: 'As it arrives here', y: x.map(over(reaches)) }, { name: '1.5 V less', y: x.map(over(reaches - 1.5)) }],
      levels: [{ says: 'asked', at: asked, left: true as const }], uprights: [{ says: 'pressure at the pump', at: against }],
    }
  },
  summary({ reaches, against, asked, given }, system) {
    const q = shown(pumpFlow, system)
    return `Asked is ${q.say(asked)} against ${shown(pumpPressure, system).say(against)}. With ${shown(pumpVoltage, system).say(reaches)} at its terminals the pump gives ${q.say(given)} there. The lines are straight between the two points of the sheet and go on so beyond them, where a real pump falls faster.`
  },
  without: 'The pump of this build is not known by two points, or no full-throttle point is solved, so nothing is drawn.',
})
