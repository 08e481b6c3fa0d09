import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { sustainedShareOf } from '@trochoid/compute/cooling/quantities.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly first: number; readonly last: number; readonly tenth: { readonly power: number; readonly pull: number } }

/** Power against the pull of the rotors over the sweep, each as a share of what it is at the highest speed. */
export default lineFigure<Data>({
  title: 'What the last turns bring, and what they ask',
  says: 'Power, sliding speed and pull of a rotor over shaft speed, each over its own value at the highest speed.',
  x: shaftSpeed, y: sustainedShareOf, named: { y: 'Of its own value at the highest speed' },
  from({ solved: { points } }) {
    const at = points.filter((p) => p.values['engine.power'] !== undefined), end = at.at(-1)
    if (!end || at.length < 2) return null
    const x = at.map((p) => p.speed), last = end.speed
    const power = at.map((p) => p.values['engine.power']! / end.values['engine.power']!), pull = x.map((speed) => (speed / last) ** 2)
    const i = Math.max(1, x.findIndex((speed) => speed >= 0.9 * last)), a = x[i - 1]!, b = x[i]!
    const before = power[i - 1]! + ((power[i]! - power[i - 1]!) * (0.9 * last - a)) / (b - a)
    return {
      x, first: x[0]!, last, tenth: { power: 1 - before, pull: 1 - 0.9 ** 2 },
      lines: [{ name: 'Power', y: power }, { name: 'Pull of a rotor, disc stress', y: pull }, { name: 'Sliding speed', y: x.map((speed) => speed / last) }],
      uprights: [{ says: 'last tenth', at: 0.9 * last }],
    }
  },
  summary({ first, last, tenth }, system) {
    const n = shown(shaftSpeed, system), s = shown(sustainedShareOf, system)
    const brings = tenth.power > 0 ? `brings ${s.say(tenth.power, 2)} of the power` : `loses ${s.say(-tenth.power, 2)} of the power`
    return `Full throttle, ${n.say(first)} to ${n.say(last)}. The last tenth of the speed ${brings} and ${s.say(tenth.pull, 2)} of the pull on every rotor bearing and of the stress in every disc: that part is the square of speed, whatever the engine.`
  },
  without: 'This build has no power at full throttle, so nothing is drawn.',
})
