import { valueAt } from '@trochoid/compute/build/sheet.ts'
import discStressCalc from '@trochoid/compute/driveline/discStress.calc.ts'
import { flywheelSpeed } from '@trochoid/compute/driveline/fields.ts'
import { discStress, ringOuterDiameter } from '@trochoid/compute/driveline/quantities.ts'
import { engineSpeedLimit } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { asked } from './asked.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

/** A missed gear, third taken for a lower one, can turn the engine half as fast again as its limiter allows. */
const missed = 1.46

type At = { readonly stress: number; readonly atBolts: number }
type Data = Drawn & { readonly limit: number; readonly diameter: number; readonly here: At; readonly over: At; readonly stated: number | null }

export default lineFigure<Data>({
  title: 'Stress in a flat flywheel over speed',
  says: 'Stress at the middle hole and at a bolt hole of a flat steel disc over shaft speed, from its own turning alone.',
  x: shaftSpeed, y: discStress,
  from(build) {
    const limit = valueAt(build.sheet, engineSpeedLimit), { given, at } = asked(discStressCalc, build)
    const of = (speed: number): At | null => { const x = at({ speed }); return x && { stress: x['stress']!, atBolts: x['atBolts']! } }
    const here = limit === null ? null : of(limit), over = limit === null ? null : of(missed * limit)
    if (limit === null || !here || !over) return null
    const x = steps(0.25 * limit, 1.5 * limit, 20), all = x.map(of), stated = valueAt(build.sheet, flywheelSpeed)
    return {
      x, limit, here, over, stated, diameter: given('diameter'),
      lines: [{ name: 'Edge of a bolt hole', y: all.map((s) => s?.atBolts ?? null) }, { name: 'Edge of the middle hole', y: all.map((s) => s?.stress ?? null) }],
      uprights: [{ says: 'limit on the sheet', at: limit }, ...(stated !== null && stated < x.at(-1)! ? [{ says: 'stated for the flywheel', at: stated }] : [])],
      marks: [{ says: 'missed gear', x: missed * limit, y: over.atBolts }],
    }
  },
  summary({ limit, diameter, here, over, stated }, system) {
    const n = shown(shaftSpeed, system), s = shown(discStress, system)
    return `A flat steel disc of ${shown(ringOuterDiameter, system).say(diameter)}, invented. At the sheet’s limit of ${n.say(limit)} the edge of a bolt hole sees ${s.say(here.atBolts)}, at ${n.say(missed * limit)} after a missed gear ${s.say(over.atBolts)}. ${stated === null ? 'No speed is stated for the flywheel of this build.' : `Its maker states ${n.say(stated)}.`} Clutch heat, bolts and cracks come on top.`
  },
  without: 'The build has no highest speed, so nothing is drawn.',
})
