import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { heatFlow } from '@trochoid/compute/cooling/quantities.ts'
import { engineRotors } from '@trochoid/compute/engine/fields.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import bearingFilm from '@trochoid/compute/oil/bearingFilm.calc.ts'
import oilPumpPower from '@trochoid/compute/oil/oilPumpPower.calc.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import { rotorInertiaLoad } from '@trochoid/compute/oil/rotorInertiaLoad.ts'
import { rotorTurning } from '@trochoid/compute/oil/rotorTurning.ts'
import { answered } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly speed: number; readonly all: number; readonly bearings: number; readonly pump: number }

/** Heat into the oil at full throttle, and what of it rotor bearings and pump make. */
export default lineFigure<Data>({
  title: 'Heat into the oil, and the part that friction makes',
  says: 'Oil heat at full throttle over shaft speed, with the friction of the rotor bearings and the power of the oil pump.',
  x: shaftSpeed, y: heatFlow,
  from({ sheet, solved: { points } }) {
    const film: AnyCalculation = bearingFilm, pump: AnyCalculation = oilPumpPower
    const rotors = valueAt(sheet, engineRotors)
    const at = points.filter((p) => p.values['cooling.oilHeat'] !== undefined && p.values['oil.temperature'] !== undefined)
    if (rotors === null || at.length < 2) return null
    const friction = at.map(({ speed, values }): number | null => {
      const build = valuesFor(rotorBearingInertia, sheet, values)
      const load = rotorInertiaLoad({ mass: build['mass'] as number, eccentricity: build['eccentricity'] as number, speed })
      const power = answered(film, { ...valuesFor(film, sheet, values), load, journal: speed, shell: rotorTurning({ speed }), turning: speed, share: build['share'] as number }, 'power')
      return power === null ? null : rotors * power
    })
    const drives = at.map((p) => answered(pump, valuesFor(pump, sheet, p.values), 'power'))
    const all = at.map((p) => p.values['cooling.oilHeat']!)
    if (friction.at(-1) == null || drives.at(-1) == null) return null
    return {
      speed: at.at(-1)!.speed, all: all.at(-1)!, bearings: friction.at(-1)!, pump: drives.at(-1)!, x: at.map((p) => p.speed),
      lines: [{ name: 'Into the oil, all told', y: all }, { name: 'Rotor bearings, inertia alone', y: friction }, { name: 'Oil pump', y: drives }],
    }
  },
  summary({ speed, all, bearings, pump }, system) {
    const q = shown(heatFlow, system)
    return `Full throttle. At ${shown(shaftSpeed, system).say(speed)} ${q.say(all)} go into the oil by the share the sheet gives it. The rotor bearings make ${q.say(bearings)} of that and the oil pump ${q.say(pump)}. The rest is mostly heat of combustion that the oil takes from inside the rotors; main bearings, gears and churning have their part in it too. The share is common practice, no source; the two frictions are worked out.`
  },
  without: 'The oil’s heat in this build could not be worked out, so nothing is drawn.',
})
