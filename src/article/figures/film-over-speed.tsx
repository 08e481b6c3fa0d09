import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { filmThickness } from '@trochoid/compute/oil/quantities.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Worst = { readonly x: number; readonly y: number }
type Data = Drawn & { readonly inertia: Worst; readonly gas: Worst; readonly wanted: number }

const thinnest = (x: readonly number[], y: readonly (number | null)[]): Worst | null =>
  y.reduce<Worst | null>((a, v, i) => (v !== null && (a === null || v < a.y) ? { x: x[i]!, y: v } : a), null)

/** Both films of the rotor bearing over the speeds of the sweep, at full throttle. */
export default lineFigure<Data>({
  title: 'The rotor bearing’s film over speed, both loads',
  says: 'Thinnest film under inertia and at the gas peak over shaft speed, with the film wanted.',
  x: shaftSpeed, y: filmThickness,
  from({ solved: { points } }) {
    const x = points.map((p) => p.speed)
    const over = (path: string) => points.map((p) => p.values[path] ?? null)
    const held = over('oil.rotorInertiaFilm'), pushed = over('oil.rotorGasFilm')
    const inertia = thinnest(x, held), gas = thinnest(x, pushed), wanted = points.at(-1)?.values['oil.rotorFilmWanted']
    if (!inertia || !gas || wanted === undefined) return null
    return {
      x, inertia, gas, wanted,
      lines: [{ name: 'Inertia', y: held }, { name: 'Gas peak, steady estimate', y: pushed }],
      levels: [{ says: 'wanted', at: wanted }],
      marks: [{ says: 'thinnest, inertia', ...inertia, below: true }, { says: 'thinnest, gas', ...gas, below: true }],
    }
  },
  summary({ inertia, gas, wanted }, system) {
    const h = shown(filmThickness, system), n = shown(shaftSpeed, system)
    return `At full throttle. Under inertia the film is thinnest at ${n.say(inertia.x)}, with ${h.say(inertia.y)}; at the gas peak at ${n.say(gas.x)}, with ${h.say(gas.y)}. ${h.say(wanted)} is wanted to clear the roughness of both surfaces. The oil is as warm at each speed as it would become there on a long pull, so the cooler is in these lines too.`
  },
  without: 'No film of this build could be worked out, so nothing is drawn.',
})
