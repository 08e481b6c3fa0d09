import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import bearingFilm from '@trochoid/compute/oil/bearingFilm.calc.ts'
import { filmTemperature, frictionPower, viscosityAt100 } from '@trochoid/compute/oil/quantities.ts'
import { rotorInertiaLoad } from '@trochoid/compute/oil/rotorInertiaLoad.ts'
import { rotorTurning } from '@trochoid/compute/oil/rotorTurning.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly now: number; readonly heat: number; readonly twice: number | null; readonly warm: number | null; readonly warmer: number | null }

/** What the rotor bearing turns into heat with the oil in the sump and with thicker ones, at the speed of greatest power and at half of it. */
export default lineFigure<Data>({
  title: 'What a thicker oil turns into heat',
  says: 'Friction power of one rotor bearing over viscosity at 100 °C, at two speeds.',
  x: viscosityAt100, y: frictionPower,
  from({ sheet, point }) {
    const of: AnyCalculation = bearingFilm
    const build = valuesFor(rotorBearingInertia, sheet, point)
    if (point['oil.temperature'] === undefined) return null
    const speed = build['speed'] as number, now = build['viscosity100'] as number, thin = build['viscosity40'] as number, turn = { mass: build['mass'] as number, eccentricity: build['eccentricity'] as number }
    const given = { ...valuesFor(of, sheet, point), share: build['share'] as number }
    const at = (k: number, out: string, n = speed): number | null =>
      answered(of, { ...given, load: rotorInertiaLoad({ ...turn, speed: n }), journal: n, shell: rotorTurning({ speed: n }), turning: n, viscosity40: k * thin, viscosity100: k * now }, out)
    const scales = steps(0.6, 2, 14)
    const heat = at(1, 'power')
    if (heat === null) return null
    return {
      now, heat, twice: at(2, 'power'), warm: at(1, 'temperature'), warmer: at(2, 'temperature'), x: scales.map((k) => k * now),
      lines: [{ name: 'At greatest power', y: scales.map((k) => at(k, 'power')) }, { name: 'At half that speed', y: scales.map((k) => at(k, 'power', speed / 2)) }],
      marks: [{ says: 'in the sump now', x: now, y: heat, below: true }],
    }
  },
  summary({ now, heat, twice, warm, warmer }, system) {
    const p = shown(frictionPower, system), t = shown(filmTemperature, system), nu = shown(viscosityAt100, system)
    return `One rotor bearing under inertia. At ${nu.say(now)} it turns ${p.say(heat)} into heat${warm === null ? '' : ` and its film runs at ${t.say(warm)}`}.${twice === null ? '' : ` An oil twice as thick makes it ${p.say(twice)}${warmer === null ? '' : ` and ${t.say(warmer)}`}.`} Oil comes to the bearing at the same temperature all along, which flatters the thick end: more heat in every bearing also warms the sump.`
  },
  without: 'The film of this build could not be worked out, so nothing is drawn.',
})
