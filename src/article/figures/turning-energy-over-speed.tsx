import { turboInertiaOf, turbosFitted } from '@trochoid/compute/boost/fields.ts'
import { at as boost } from '@trochoid/compute/boost/point.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { clutchInertia, flywheelInertia, mass } from '@trochoid/compute/driveline/fields.ts'
import { turningEnergyOf } from '@trochoid/compute/driveline/turningEnergyOf.ts'
import { turningEnergy } from '@trochoid/compute/driveline/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { quantity } from '@trochoid/compute/quantity/quantity.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly top: number; readonly flywheel: number; readonly turbo: number | null; readonly lift: number | null }

const height = quantity('Height', 'h', 'length', [0, 100], 0.1, { show: ['m', 'ft'] })
const gravity = 9.80665

/** What the turning parts hold over shaft speed, at full throttle. */
export default lineFigure<Data>({
  title: 'Energy in what turns',
  says: 'Energy held by flywheel and clutch and by the turbocharger’s wheels over shaft speed.',
  x: shaftSpeed, y: turningEnergy,
  from({ sheet, solved: { points } }) {
    const disc = valueAt(sheet, flywheelInertia), clutch = valueAt(sheet, clutchInertia), rotor = valueAt(sheet, turboInertiaOf), turbos = valueAt(sheet, turbosFitted), car = valueAt(sheet, mass)
    const last = points.at(-1)
    if (disc === null || clutch === null || !last) return null
    const wheels = points.map((p) => { const speed = p.values[boost.compressorSpeed.path]; return rotor === null || turbos === null || speed === undefined ? null : turningEnergyOf({ inertia: rotor * turbos, speed }) })
    const flywheel = turningEnergyOf({ inertia: disc + clutch, speed: last.speed })
    return {
      x: points.map((p) => p.speed), top: last.speed, flywheel, turbo: wheels.at(-1) ?? null, lift: car === null ? null : flywheel / (car * gravity),
      lines: [{ name: 'Flywheel and clutch', y: points.map((p) => turningEnergyOf({ inertia: disc + clutch, speed: p.speed })) }, { name: 'Turbocharger’s wheels', y: wheels }],
    }
  },
  summary({ top, flywheel, turbo, lift }, system) {
    const e = shown(turningEnergy, system)
    return `At ${shown(shaftSpeed, system).say(top)} flywheel and clutch hold ${e.say(flywheel)}${lift === null ? '' : `, which would lift this car by ${shown(height, system).say(lift)}`}${turbo === null ? '' : `; the turbocharger’s wheels ${e.say(turbo)}, in two small wheels`}. Energy goes with the square of speed: at half of it there is a quarter.`
  },
  without: 'Flywheel or clutch of this build are not known, or it has no speeds, so nothing is drawn.',
})
