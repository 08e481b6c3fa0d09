import { valueAt } from '@trochoid/compute/build/sheet.ts'
import discStressCalc from '@trochoid/compute/driveline/discStress.calc.ts'
import { flywheelSpeed, secondGear, thirdGear } from '@trochoid/compute/driveline/fields.ts'
import { discStress, ringOuterDiameter } from '@trochoid/compute/driveline/quantities.ts'
import { engineSpeedLimit } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { asked } from './asked.ts'
import { steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type At = { readonly stress: number; readonly atBolts: number }
type Data = Drawn & { readonly limit: number; readonly missed: number; readonly diameter: number; readonly here: At; readonly over: At; readonly stated: number | null }

export default lineFigure<Data>({
  title: 'Stress in a flat flywheel over speed',
  says: 'Stress at the middle hole and at a bolt hole of a flat steel disc over shaft speed, from its own turning alone.',
  x: shaftSpeed, y: discStress,
  from(build) {
    const limit = valueAt(build.sheet, engineSpeedLimit), { given, at } = asked(discStressCalc, build)
    const of = (speed: number): At | null => { const x = at({ speed }); return x && { stress: x['stress']!, atBolts: x['atBolts']! } }
    const second = valueAt(build.sheet, secondGear), third = valueAt(build.sheet, thirdGear)
    if (limit === null || second === null || third === null) return null
    // Down from third at the limit, into second.
    const missed = (limit * second) / third, here = of(limit), over = of(missed)
    if (!here || !over) return null
    const x = steps(0.25 * limit, Math.max(1.1 * limit, 1.02 * missed), 20), all = x.map(of), stated = valueAt(build.sheet, flywheelSpeed)
    return {
      x, limit, missed, here, over, stated, diameter: given('diameter'),
      lines: [{ name: 'Edge of a bolt hole', y: all.map((s) => s?.atBolts ?? null) }, { name: 'Edge of the middle hole', y: all.map((s) => s?.stress ?? null) }],
      uprights: [{ says: 'limit on the sheet', at: limit }, ...(stated !== null && stated < x.at(-1)! ? [{ says: 'stated for the flywheel', at: stated }] : [])],
      marks: [{ says: 'missed gear', x: missed, y: over.atBolts }],
    }
  },
  summary({ limit, missed, diameter, here, over, stated }, system) {
    const n = shown(shaftSpeed, system), s = shown(discStress, system)
    return `A flat steel disc of ${shown(ringOuterDiameter, system).say(diameter)}, invented. At the sheet’s limit of ${n.say(limit)} the edge of a bolt hole sees ${s.say(here.atBolts)}, at ${n.say(missed)}, third gear’s limit taken into second, ${s.say(over.atBolts)}. ${stated === null ? 'No speed is stated for the flywheel of this build.' : `The maker of this build’s flywheel states ${n.say(stated)}.`} Clutch heat, bolts and cracks come on top.`
  },
  without: 'The build has no highest speed or no second and third gear, so nothing is drawn.',
})
